await withSceneModules(async ({load,spec})=>{
 const S=await load('/src/scene/shapes.ts');
 const lighter=(d,grid,k)=>{const n=v=>String(Math.round(v*k/grid)*grid);const w=ps=>ps.map(p=>n(p.x)+' '+n(p.y)).join(' ');let from={x:0,y:0};
 return d.replace(/([MLCQ])([-\d. ]+)/g,(_,c,nums)=>{const own=S.pointsOf(nums);const st=from;from=own.at(-1);if(c!=='C')return c+w(own);const [a,b,e]=own;const t=Math.hypot(e.x-3*b.x+3*a.x-st.x,e.y-3*b.y+3*a.y-st.y);if(t*Math.sqrt(3)/36>0.4)return 'C'+w(own);return 'Q'+w([{x:(3*(a.x+b.x)-st.x-e.x)/4,y:(3*(a.y+b.y)-st.y-e.y)/4},e])})};
 const L=await load('/src/scene/whole/layout.ts'),bed=await load('/src/scene/whole/bed.ts'),body=await load('/src/scene/whole/body.ts'),leg=await load('/src/scene/whole/leg.ts'),pull=await load('/src/scene/whole/pull.ts');
 const sp={...spec.NEUTRAL,wiggle:0};const g=L.layoutWhole(sp,{width:480,height:360});
 const m=(n,a)=>console.log(n,a.length,a.map(x=>lighter(x.d,1,.8333)).join('').length, a.map(s=>s.fill+'/'+s.line).join(' '));
 m('bedBehind',bed.drawBedBehind(sp,g));m('front',bed.drawBedFront(g));m('ground',pull.drawBagGround(sp,g));m('wheel',pull.drawWheel(g));m('other',leg.drawOtherLeg(sp,g));m('head',body.drawHeadAndNeck(sp,g));m('plate',pull.drawPlate(g));m('pulled',leg.drawPulledLeg(sp,g));m('trunk',body.drawTrunk(sp,g));m('blanket',body.drawBlanket(g));m('fararm',body.drawFarArm(g));m('toy',body.drawToy(g));m('near',body.drawNearArm(g));m('cord',pull.drawCord(sp,g));m('bag',pull.drawBag(sp,g));
 console.log(JSON.stringify({hip:g.hip,neck:g.neck,hipNear:g.hipNear,ankle:g.ankle,knee:g.knee,otherAnkle:g.otherAnkle,otherHip:g.otherHip,plate:g.plate,wheel:g.wheel,bag:g.bag,hinge:g.hinge,head:body.headCenter(g),pf:g.pillowFrom,pt:g.pillowTo,b0:g.bed(15,0,0),b1:g.bed(15,0,100),f0:g.bed(400,0,0),f1:g.bed(400,0,100)},(k,v)=>typeof v==='number'?Math.round(v):v));
});
