/**
 * The ingredients a bakery uses, one a line, fields between tabs: name; kind; NDB number; then per 100 g water, protein, fat,
 * saturated fat, carbohydrate by difference, total sugars, fibre (g), sodium (mg), energy (kcal) and ash (g); extra water in
 * grams per gram (~ before a rough figure); household weights in grams (US cup 236.588 mL, tablespoon, teaspoon); other names;
 * allergens it has by its nature; the factor from its nitrogen to its protein (blank: 6.25). A blank figure is not known.
 *
 * Rows with an NDB number: USDA National Nutrient Database for Standard Reference, Release 28 (May 2016), a work of the US
 * Government in the public domain; its measure without a form, or the usual form, then those of the forms it tells apart. Butter and margarine sticks are 4 oz.
 * Spelt flour is the grain's analysis.
 * Rows without one: water and ice are water alone. Instant yeast has the active dry's analysis; dry yeasts weigh 3.1 g a
 * teaspoon and 7 g a sachet (US, UK, German and French packs; SR28's 4 g contradicts its own packet), a cube of fresh yeast
 * 42 g (DE, FR). Kinds of salt by the teaspoon: three agreeing cooking pages; a span where the flakes differ. Creams: from
 * memory, on the UK's legal least fat of 48 % and 18 %. Cream of tartar: from memory, SR28 18373.
 * Nitrogen factors, by which SR28 prints protein: Merrill and Watt 1973 and FAO/WHO 1973; wheat germ 5.8, seeds and coconut as nuts from memory.
 * Extra water: nonfat dry milk 0.58 (J. Dairy Sci. 34:1092, 1951), gluten 1.5 (Baker's Dictionary), defatted soy 1.06 (from a
 * published study of buns, 0 to 15 % in place of flour), psyllium 4.5 (US patent 8075938); rough, from memory: bran, cocoa
 * (How Baking Works), potato flakes.
 */
export const LARDER_ROWS = `all-purpose flour	flour	20081	11.92	10.33	0.98	0.155	76.31	0.27	2.7	2	364	0.47		cup 125	flour;AP flour;plain flour;white flour;wheat flour;plain white flour;flour all purpose;flour plain;unbleached flour;unbleached all purpose flour	wheat	5.7
bread flour	flour	20083	13.36	11.98	1.66	0.244	72.53	0.31	2.4	2	361	0.47		cup 137	strong flour;strong white flour;strong bread flour;white bread flour;strong white bread flour;flour bread;flour strong;unbleached bread flour	wheat	5.7
high-gluten flour	flour	20640	12.82	13.07	1.38	0.189	72.2	1.1	2.4	2	362	0.53			very strong flour;extra strong flour;flour high gluten;very strong white flour	wheat	5.7
cake flour	flour	20084	12.51	8.2	0.86	0.127	78.03	0.31	1.7	2	362	0.39		cup 137; cup unsifted 137	sponge flour;soft flour;weak flour;flour cake	wheat	5.7
self-rising flour	flour	20082	10.59	9.89	0.97	0.154	74.22	0.22	2.7	1193	354	4.33		cup 125	self-raising flour;SR flour;flour self rising;flour self raising	wheat	5.7
whole wheat flour	flour	20080	10.74	13.21	2.5	0.43	71.97	0.41	10.7	2	340	1.58		cup 120	wholemeal flour;wholewheat flour;whole meal flour;strong wholemeal flour;wholemeal bread flour;graham flour;whole grain flour;wholegrain flour;flour whole wheat;flour wholemeal;whole wheat;wholemeal	wheat	5.83
whole wheat pastry flour	flour	20649	12.42	9.61	1.95	0.43	74.48	1.02	13.1	3	332	1.53			soft wholemeal flour;whole soft wheat flour	wheat	5.83
dark rye flour	flour	20063	10.75	15.91	2.22	0.269	68.63	2.31	23.8	2	325	2.5		cup 128	whole rye flour;wholemeal rye flour;whole grain rye flour;wholegrain rye flour;pumpernickel flour;rye flour dark	rye	5.83
medium rye flour	flour	20064	10.97	10.88	1.52	0.18	75.43	1.1	11.8	2	349	1.2		cup 102	rye flour;flour rye;rye flour medium	rye	5.83
light rye flour	flour	20065	11.4	9.82	1.33	0.15	76.68	0.93	8	2	357	0.78		cup 102	white rye flour;rye flour light	rye	5.83
whole spelt flour	flour	20140	11.02	14.57	2.43	0.406	70.19	6.82	10.7	8	338	1.78			spelt flour;wholemeal spelt flour;wholegrain spelt flour;flour spelt	wheat	5.83
semolina	flour	20066	12.67	12.68	1.05	0.15	72.83		3.9	1	360	0.77		cup 167	semolina flour;durum semolina;durum flour;semola	wheat	5.7
buckwheat flour	flour	20011	11.15	12.62	3.1	0.677	70.59	2.6	10	11	335	2.54		cup 120	flour buckwheat	
rice flour	flour	20061	11.89	5.95	1.42	0.386	80.13	0.12	2.4	0	366	0.61		cup 158	white rice flour;flour rice		5.95
whole corn flour	flour	20016	10.91	6.93	3.86	0.543	76.85	0.64	7.3	5	361	1.45		cup 117	whole grain corn flour;yellow corn flour	
cornmeal	grain	20022	11.18	7.11	1.75	0.22	79.45	1.61	3.9	7	370	0.51		cup 157	polenta;maize meal;yellow cornmeal;degermed cornmeal	
cornstarch	other	20027	8.32	0.26	0.05	0.009	91.27	0	0.9	9	381	0.09		cup 128	corn starch;cornflour;maize starch	
barley malt flour	other	20131	8.21	10.28	1.84	0.386	78.3	0.8	7.1	11	361	1.37		cup 162	malt flour;malted barley flour;diastatic malt;diastatic malt powder;malt powder	barley	5.83
vital wheat gluten	other	48052	8.2	75.16	1.85	0.272	13.79	0	0.6	29	370	1	1.5		gluten;wheat gluten;vital gluten;VWG;gluten flour	wheat	5.7
oat bran	grain	20033	6.55	17.3	7.03	1.328	66.22	1.45	15.4	4	246	2.89		cup 94		oats	5.83
rolled oats	grain	08120	10.84	13.15	6.52	1.11	67.7	0.99	10.1	6	379	1.77		cup 81	oats;oat flakes;porridge oats;old fashioned oats;quick oats;oatmeal;jumbo oats	oats	5.83
oat groats	grain	20038	8.22	16.89	6.9	1.217	66.27		10.6	2	389	1.72		cup 156	whole oats;oat kernels	oats	5.83
rye grain	grain	20062	10.6	10.34	1.63	0.197	75.86	0.98	15.1	2	338	1.57		cup 169	rye berries;rye kernels;rye berry	rye	5.83
spelt grain	grain	20140	11.02	14.57	2.43	0.406	70.19	6.82	10.7	8	338	1.78		cup 174	spelt;spelt berries;spelt kernels;spelt berry	wheat	5.83
wheat bran	grain	20077	9.89	15.55	4.25	0.63	64.51	0.41	42.8	2	216	5.79	~0.95	cup 58	bran	wheat	6.31
wheat germ	grain	20078	11.12	23.15	9.72	1.665	51.8		13.2	12	360	4.21		cup 115	wheatgerm;germ	wheat	5.8
defatted soy flour	other	16117	7.25	51.46	1.22	0.136	33.92	16.42	17.5	20	327	6.15	1.06	cup 105; tbsp 6.6	soy flour defatted;soya flour defatted;defatted soya flour	soybeans	5.71
full-fat soy flour	other	16115	5.16	37.81	20.65	2.987	31.92	7.5	9.6	13	434	4.46		cup 84; tbsp 5.2	soy flour;soya flour;soy flour full fat	soybeans	5.71
potato flour	other	11413	6.52	6.9	0.34	0.09	83.1	3.52	5.9	55	357	3.14		cup 160		
potato flakes	other	11378	6.58	8.34	0.41	0.169	81.17	3.36	6.6	77	354	3.5	~3.5	cup 60	dried potato flakes;instant mashed potato;instant potato flakes	
whole egg	egg	01123	76.15	12.56	9.51	3.126	0.72	0.37	0	142	143	1.06		cup 243; piece 50; small 38; medium 44; large 50; extra large 56; jumbo 63	egg;egg whole;fresh egg;liquid egg;liquid whole egg;beaten egg	eggs
egg white	egg	01124	87.57	10.9	0.17	0	0.73	0.71	0	166	52	0.63		cup 243; piece 33; large 33	whites of egg;albumen;liquid egg white	eggs
egg yolk	egg	01125	52.31	15.86	26.54	9.551	3.59	0.56	0	48	322	1.71		cup 243; piece 17; large 17	yolk;yolks of egg;liquid egg yolk	eggs
dried whole egg	egg	01133	2.78	48.05	43.9	15.069	1.13	0.56	0	476	592	4.13		cup 85; tbsp 5; cup sifted 85	whole egg powder;egg powder;dried egg;whole egg dried;powdered egg	eggs
dried egg white	egg	01136	8.54	82.4	0.04	0	4.47	0	0	1238	376	4.55		cup 107; tbsp 7; cup sifted 107	egg white powder;powdered egg white;dried albumen;egg white dried	eggs
dried egg yolk	egg	01137	3.08	33.63	59.13	20.334	0.66	0.23	0	149	669	3.51		cup 67; tbsp 4; cup sifted 67	egg yolk powder;powdered egg yolk;egg yolk dried	eggs
whole milk	dairy	01211	88.13	3.15	3.27	1.865	4.78	5.05	0	43	61	0.67		cup 244; tbsp 15	milk;full-fat milk;full cream milk;fresh milk;milk whole	milk	6.38
2% milk	dairy	01079	89.21	3.3	1.98	1.257	4.8	5.06	0	47	50	0.71		cup 244	semi-skimmed milk;semi skim milk;reduced-fat milk;milk 2%;2 % milk	milk	6.38
skim milk	dairy	01085	90.84	3.37	0.08	0.056	4.96	5.09	0	42	34	0.75		cup 245	skimmed milk;nonfat milk;fat-free milk;milk skim;non fat milk	milk	6.38
buttermilk	dairy	01088	90.13	3.31	0.88	0.548	4.79	4.79	0	190	40	0.89		cup 245	cultured buttermilk;low-fat buttermilk	milk	6.38
half and half	dairy	01049	81.24	3.13	10.39	7.032	4.73	4.13	0	61	123	0.51		cup 242; tbsp 15	half & half	milk	6.38
heavy cream	dairy	01053	57.81	2.84	36.08	23.032	2.74	2.92	0	27	340	0.53		cup 238; tbsp 15	cream;whipping cream;heavy whipping cream;cream heavy;cream whipping	milk	6.38
sour cream	dairy	01056	73.07	2.44	19.35	10.14	4.63	3.41	0	31	198	0.51		cup 230; tbsp 12	soured cream;cream sour	milk	6.38
plain yogurt	dairy	01116	87.9	3.47	3.25	2.096	4.66	4.66	0	46	61	0.72		cup 245	yogurt;yoghurt;plain yoghurt;natural yogurt;natural yoghurt;whole milk yogurt	milk	6.38
low-fat yogurt	dairy	01117	85.07	5.25	1.55	1	7.04	7.04	0	70	63	1.09		cup 245	low-fat yoghurt	milk	6.38
nonfat yogurt	dairy	01118	85.23	5.73	0.18	0.116	7.68	7.68	0	77	56	1.18		cup 245	nonfat yoghurt;fat-free yogurt;fat-free yoghurt	milk	6.38
cream cheese	dairy	01017	52.62	6.15	34.44	20.213	5.52	3.76	0	314	350	1.27		cup 232; tbsp 14.5	soft cheese;full fat soft cheese	milk	6.38
ricotta	dairy	01036	71.7	11.26	12.98	8.295	3.04	0.27	0	84	174	1.02		cup 246	ricotta cheese;whole milk ricotta	milk	6.38
cheddar	dairy	01009	37.02	22.87	33.31	18.867	3.09	0.48	0	653	404	3.71		cup 113; cup shredded 113; cup grated 113; cup diced 132	cheddar cheese;grated cheddar;shredded cheddar;grated cheese	milk	6.38
mozzarella	dairy	01028	53.78	24.26	15.92	10.114	2.77	1.13	0	619	254	3.27			mozzarella cheese;part skim mozzarella;shredded mozzarella;grated mozzarella	milk	6.38
parmesan	dairy	01032	22.65	28.42	27.84	15.371	13.91	0.07	0	1804	420	7.18		cup 100; tbsp 5; cup grated 100; tbsp grated 5	parmesan cheese;grated parmesan	milk	6.38
unsalted butter	fat	01145	17.94	0.85	81.11	50.489	0.06	0.06	0	11	717	0.09		cup 227; tbsp 14.2; stick 113.4	butter;sweet butter;butter unsalted	milk	6.38
salted butter	fat	01001	15.87	0.85	81.11	51.368	0.06	0.06	0	643	717	2.11		cup 227; tbsp 14.2; stick 113.4	butter salted	milk	6.38
margarine	fat	04610	16.52	0.16	80.71	15.189	0.7	0	0	751	717	1.92		cup 227; tbsp 14; tsp 4.7; stick 113.4	baking margarine;block margarine;stick margarine	
shortening	fat	04615	0	0	99.97	24.98	0	0	0	4	884	0.03		cup 205; tbsp 12.8	vegetable shortening;vegetable fat;white fat	
lard	fat	04002	0	0	100	39.2	0	0	0	0	902	0		cup 205; tbsp 12.8	pork fat	
soybean oil	fat	04044	0	0	100	15.65	0	0	0	0	884	0		cup 218; tbsp 13.6; tsp 4.5	vegetable oil;oil;salad oil;cooking oil;soya oil	soybeans
olive oil	fat	04053	0	0	100	13.808	0	0	0	2	884	0		cup 216; tbsp 13.5; tsp 4.5	extra virgin olive oil;EVOO	
sunflower oil	fat	04506	0	0	100	10.3	0	0	0	0	884	0		cup 218; tbsp 13.6; tsp 4.5		
canola oil	fat	04582	0	0	100	7.365	0	0	0	0	884	0		cup 218; tbsp 14; tsp 4.5	rapeseed oil;colza oil	
nonfat dry milk	dairy	01091	3.16	36.16	0.77	0.499	51.98	51.98	0	535	362	7.93	0.58	cup 120	NFDM;skim milk powder;skimmed milk powder;dried skim milk;dried skimmed milk;milk powder;dry milk;dried milk;powdered milk;SMP;DMS;dry milk solids;milk solids;nonfat milk powder;nonfat dried milk	milk	6.38
instant nonfat dry milk	dairy	01092	3.96	35.1	0.72	0.467	52.19	52.19	0	549	358	8.03	0.58	cup 68	instant milk powder;instant dry milk;instant NFDM;instant skim milk powder;instant nonfat milk powder;nonfat dry milk instant;instant dried milk	milk	6.38
whole milk powder	dairy	01090	2.47	26.32	26.71	16.742	38.42	38.42	0	371	496	6.08		cup 128	dried whole milk;dry whole milk;full cream milk powder;powdered whole milk;WMP	milk	6.38
buttermilk powder	dairy	01094	2.97	34.3	5.78	3.598	49	49	0	517	387	7.95		cup 120; tbsp 6.5	dried buttermilk;dry buttermilk	milk	6.38
sweet whey powder	dairy	01115	3.19	12.93	1.07	0.684	74.46	74.46	0	1079	353	8.35		cup 145; tbsp 7.5	whey powder;dried whey;dry whey;sweet whey	milk	6.38
sweetened condensed milk	dairy	01095	27.16	7.91	8.7	5.486	54.4	54.4	0	127	321	1.83		cup 306	condensed milk	milk	6.38
evaporated milk	dairy	01096	74.04	6.81	7.56	4.591	10.04	10.04	0	106	134	1.55		cup 252		milk	6.38
granulated sugar	sugar	19335	0.02	0	0	0	99.98	99.8	0	1	387	0.01		cup 200; tsp 4.2; cube 2.3; sachet 2.8	sugar;caster sugar;castor sugar;white sugar;superfine sugar;sucrose;sugar granulated;fine sugar;table sugar	
brown sugar	sugar	19334	1.34	0.12	0	0	98.09	97.02	0	28	380	0.45		cup 220; tsp 4.6; cup packed 220; tsp packed 4.6; cup unpacked 145; tsp unpacked 3	light brown sugar;dark brown sugar;soft brown sugar;packed brown sugar;muscovado;muscovado sugar;light muscovado sugar;dark muscovado sugar;sugar brown	
powdered sugar	sugar	19336	0.23	0	0	0	99.77	97.81	0	2	389	0.01		cup 120; tbsp 8; tsp 2.5; cup unsifted 120; tbsp unsifted 8; cup sifted 100	icing sugar;confectioners' sugar;10x sugar;sugar powdered;sugar icing	
honey	sugar	19296	17.1	0.3	0	0	82.4	82.12	0.2	4	304	0.2		cup 339; tbsp 21	liquid honey	
molasses	sugar	19304	21.87	0	0.1	0.018	74.73	74.72	0	37	290	3.3		cup 337; tbsp 20	black treacle;treacle	
malt syrup	sugar	19352	21.1	6.2	0	0	71.3	71.3	0	35	318	1.3		cup 332; tbsp 21	barley malt syrup;malt extract;barley malt	barley	5.83
light corn syrup	sugar	19350	22.81	0	0.2	0	76.79	76.77	0	62	283	0.2		cup 341; tbsp 22	corn syrup	
maple syrup	sugar	19353	32.39	0.04	0.06	0.007	67.04	60.46	0	12	260	0.47		cup 315; tbsp 20		
fresh yeast	yeast	18374	69	8.4	1.9	0.243	18.1	0	8.1	30	105	1.8		cake 17; cube 42	compressed yeast;cake yeast;baker's yeast;wet yeast;yeast fresh;yeast compressed	
active dry yeast	yeast	18375	5.08	40.44	7.61	1.001	41.22	0	26.9	51	325	5.65		tsp 3.1; sachet 7	ADY;dried active yeast;active dried yeast;yeast active dry;traditional dried yeast	
baking powder	other	18369	5	0	0	0	27.7	0	0.2	10600	53	67.3		tsp 4.6	double-acting baking powder;BP	
baking soda	other	18372	0.2	0	0	0	0	0	0	27360	0	36.9		tsp 4.6	bicarbonate of soda;bread soda;sodium bicarbonate;bicarb;bicarb soda;soda	
salt	salt	02047	0.2	0	0	0	0	0	0	38758	0	99.8		cup 292; tbsp 18; tsp 6; dash 0.4	table salt;fine salt;cooking salt	
gelatin	other	19177	13	85.6	0.1	0.07	0	0	0	196	335	1.3		tbsp 7; sachet 7	gelatine;powdered gelatin;powdered gelatine		5.55
cocoa	other	19165	3	19.6	13.7	8.07	57.9	1.75	37	21	228	5.8	~1	cup 86; tbsp 5.4	cocoa powder;unsweetened cocoa;unsweetened cocoa powder;natural cocoa	
unsweetened chocolate	other	19078	1.34	14.32	52.31	32.277	28.42	0.91	16.6	24	642	3.6		cup 132; cup grated 132	baking chocolate;chocolate liquor;cocoa mass	
semisweet chocolate	other	19080	0.7	4.2	30	17.75	63.9	54.5	5.9	11	480	1.2		cup 168	dark chocolate;plain chocolate;chocolate;chocolate chips;semisweet chocolate chips;dark chocolate chips;semi-sweet chocolate;semi sweet chocolate chips	
almonds	other	12061	4.41	21.15	49.93	3.802	21.55	4.35	12.5	1	579	2.97		cup 143; piece 1.2; cup whole 143; cup sliced 92; cup slivered 108; cup ground 95	whole almonds;almond kernels	almonds	5.18
sliced almonds	other	12061	4.41	21.15	49.93	3.802	21.55	4.35	12.5	1	579	2.97		cup 92	flaked almonds;almond flakes;almonds sliced;almonds flaked	almonds	5.18
slivered almonds	other	12061	4.41	21.15	49.93	3.802	21.55	4.35	12.5	1	579	2.97		cup 108	almonds slivered	almonds	5.18
ground almonds	other	12061	4.41	21.15	49.93	3.802	21.55	4.35	12.5	1	579	2.97		cup 95	almond flour;almond meal;almonds ground	almonds	5.18
walnuts	other	12155	4.07	15.23	65.21	6.126	13.71	2.61	6.7	2	654	1.78		cup 117; cup chopped 117; cup ground 80	chopped walnuts;walnut pieces;walnuts chopped	walnuts	5.3
walnut halves	other	12155	4.07	15.23	65.21	6.126	13.71	2.61	6.7	2	654	1.78		cup 100	shelled walnuts	walnuts	5.3
ground walnuts	other	12155	4.07	15.23	65.21	6.126	13.71	2.61	6.7	2	654	1.78		cup 80	walnut meal	walnuts	5.3
pecans	other	12142	3.52	9.17	71.97	6.18	13.86	3.97	9.6	0	691	1.49		cup 109; cup chopped 109	chopped pecans;pecan pieces;pecan nuts	pecans	5.3
pecan halves	other	12142	3.52	9.17	71.97	6.18	13.86	3.97	9.6	0	691	1.49		cup 99		pecans	5.3
hazelnuts	other	12120	5.31	14.95	60.75	4.464	16.7	4.34	9.7	0	628	2.29		cup 135; cup whole 135; cup chopped 115; cup ground 75	filberts;whole hazelnuts;cobnuts	hazelnuts	5.3
chopped hazelnuts	other	12120	5.31	14.95	60.75	4.464	16.7	4.34	9.7	0	628	2.29		cup 115	hazelnuts chopped	hazelnuts	5.3
ground hazelnuts	other	12120	5.31	14.95	60.75	4.464	16.7	4.34	9.7	0	628	2.29		cup 75	hazelnut flour;hazelnut meal	hazelnuts	5.3
pistachios	other	12151	4.37	20.16	45.32	5.907	27.17	7.66	10.6	1	560	2.99		cup 123; piece 0.7	pistachio nuts;pistachio kernels	pistachios	5.3
pine nuts	other	12147	2.28	13.69	68.37	4.899	13.08	3.59	3.7	2	673	2.59		cup 135	pine kernels;pignoli		5.3
sesame seed	grain	12023	4.69	17.73	49.67	6.957	23.45	0.3	11.8	11	573	4.45		cup 144; tbsp 9	sesame	sesame	5.3
sunflower seed	grain	12036	4.73	20.78	51.46	4.455	20	2.62	8.6	9	584	3.02		cup 140	sunflower kernels;sunflower seed kernels		5.3
flaxseed	grain	12220	6.96	18.29	42.16	3.663	28.88	1.55	27.3	30	534	3.72		cup 168; tbsp 10.3; tsp 3.4	linseed;flax;flax seed;whole flaxseed;golden flaxseed		5.3
ground flaxseed	grain	12220	6.96	18.29	42.16	3.663	28.88	1.55	27.3	30	534	3.72		tbsp 7; tsp 2.5	flaxseed meal;flax meal;ground linseed;milled flaxseed		5.3
poppy seed	grain	02033	5.95	17.99	41.56	4.517	28.13	2.99	19.5	26	525	6.37		tbsp 8.8; tsp 2.8	blue poppy seed		5.3
caraway seed	other	02005	9.87	19.77	14.59	0.62	49.9	0.64	38	17	333	5.87		tbsp 6.7; tsp 2.1	caraway	
fennel seed	other	02018	8.81	15.8	14.87	0.48	52.29		39.8	88	345	8.22		tbsp 5.8; tsp 2	fennel	
cinnamon	other	02010	10.58	3.99	1.24	0.345	80.59	2.17	53.1	10	247	3.6		tbsp 7.8; tsp 2.6	ground cinnamon;cinnamon powder	
cardamom	other	02006	8.28	10.76	6.7	0.68	68.47		28	18	311	5.78		tbsp 5.8; tsp 2	ground cardamom	
ground ginger	other	02021	9.94	8.98	4.24	2.599	71.62	3.39	14.1	27	335	5.22		tbsp 5.2; tsp 1.8	ginger;ginger powder;powdered ginger	
nutmeg	other	02025	6.23	5.84	36.31	25.94	49.29	2.99	20.8	16	525	2.34		tbsp 7; tsp 2.2	ground nutmeg;grated nutmeg	
cayenne	other	02031	8.05	12.01	17.27	3.26	56.63	10.34	27.2	30	318	6.04		tbsp 5.3; tsp 1.8	red pepper;cayenne pepper;ground red pepper	
peanut butter	other	16098	1.23	22.21	51.36	10.325	22.31	10.49	5	426	598	2.89		cup 258; tbsp 16	smooth peanut butter;creamy peanut butter	peanuts	5.46
raisins	fruit	09298	15.43	3.07	0.46	0.058	79.18	59.19	3.7	11	299	1.85		cup 145; cup unpacked 145; cup packed 165	sultanas;seedless raisins;golden raisins;sultana raisins	
currants	fruit	09085	19.21	4.08	0.27	0.028	74.08	67.28	6.8	8	283	2.36		cup 144	zante currants;dried currants	
dried cranberries	fruit	09079	15.79	0.17	1.09	0.088	82.8	72.56	5.3	5	308	0.15		cup 160	cranberries dried;sweetened dried cranberries;dried cranberry	
dates	fruit	09087	20.53	2.45	0.39	0.032	75.03	63.35	8	2	282	1.6		cup 147; piece 7.1; cup chopped 147	chopped dates;pitted dates	
banana	fruit	09040	74.91	1.09	0.33	0.112	22.84	12.23	2.6	1	89	0.82		cup 225; piece 118; small 101; medium 118; large 136; extra large 152; cup mashed 225; cup sliced 150	mashed banana;ripe banana	
applesauce	fruit	09019	88.22	0.17	0.1	0.008	11.27	9.39	1.1	2	42	0.24		cup 244	apple sauce;apple puree;unsweetened applesauce	
apple	fruit	09003	85.56	0.26	0.17	0.028	13.81	10.39	2.4	1	52	0.19		cup 125; piece 182; small 149; medium 182; large 223; cup chopped 125; cup sliced 109	chopped apple;raw apple	
pumpkin puree	fruit	11424	89.97	1.1	0.28	0.146	8.09	3.3	2.9	5	34	0.56		cup 245	canned pumpkin;pumpkin;tinned pumpkin	
boiled potato	fruit	11367	77.46	1.71	0.1	0.026	20.01	0.89	1.8	5	86	0.72		cup 156; piece 167; small 125; medium 167; large 300	potato;potatoes;cooked potato;mashed potato;cooked potatoes;boiled potatoes	
carrot	fruit	11124	88.29	0.93	0.24	0.037	9.58	4.74	2.8	69	41	0.97		cup 110; piece 61; small 50; medium 61; large 72; cup grated 110; cup shredded 110; cup chopped 128; cup sliced 122	grated carrot;raw carrot	
onion	fruit	11282	89.11	1.1	0.1	0.042	9.34	4.24	1.7	4	40	0.35		cup 160; piece 110; small 70; medium 110; large 150; cup chopped 160; tbsp chopped 10; cup sliced 115	chopped onion;raw onion	
orange juice	fruit	09206	88.3	0.7	0.2	0.024	10.4	8.4	0.2	1	45	0.4		cup 248; piece 86		
lemon juice	fruit	09152	92.31	0.35	0.24	0.04	6.9	2.52	0.3	1	22	0.21		cup 244; piece 48		
cider vinegar	other	02048	93.81	0	0	0	0.93	0.4	0	5	21	0.17		cup 239; tbsp 14.9; tsp 5	vinegar;apple cider vinegar	
vanilla extract	other	02050	52.58	0.06	0.06	0.01	12.65	12.65	0	9	288	0.26		cup 208; tbsp 13; tsp 4.2	vanilla;vanilla essence	
brewed coffee	other	14209	99.39	0.12	0.02	0.002	0	0	0	2	1	0.35		cup 237	coffee;black coffee	
sweetened coconut	other	12179	12.55	2.88	35.49	31.468	47.67	43.17	4.5	262	501	1.42		cup 93; cup shredded 93	shredded coconut;coconut;sweetened shredded coconut		5.3
water	water		100	0	0	0	0	0	0	0	0	0		cup 236.5882; tbsp 14.7868; tsp 4.92892	tap water;cold water;warm water;hot water;lukewarm water;iced water;ice water;drinking water	
ice	ice		100	0	0	0	0	0	0	0	0	0			flake ice;crushed ice;ice cubes;ice flakes	
instant yeast	yeast		5.08	40.44	7.61	1.001	41.22	0	26.9	51	325	5.65		tsp 3.1; sachet 7	IDY;instant dry yeast;instant dried yeast;fast-action yeast;fast-action dried yeast;rapid-rise yeast;quick yeast;easy-bake yeast;easy bake yeast;bread machine yeast;yeast instant	
yeast	yeast													tsp 3.1; sachet 7	dry yeast;dried yeast	
fine sea salt	salt		0.2	0	0	0	0	0	0	38758	0	99.8		tsp 5.5	sea salt fine	
coarse salt	salt		0.2	0	0	0	0	0	0	38758	0	99.8		tsp 4.9	coarse sea salt;sea salt coarse	
kosher salt	salt		0.2	0	0	0	0	0	0	38758	0	99.8		tsp 2.8 to 5	coarse kosher salt;kosher	
flaky salt	salt		0.2	0	0	0	0	0	0	38758	0	99.8		tsp 2 to 3	flaky sea salt;flake salt;sea salt flakes;flaked sea salt	
sea salt	salt		0.2	0	0	0	0	0	0	38758	0	99.8		tsp 2 to 6		
double cream	dairy		47.5	1.6	48	30	2.5	2.5	0	25	449	0.4		tbsp 15	cream double	milk	6.38
single cream	dairy		75.3	2.9	18	11.3	3.3	3.3	0	40	187	0.5		tbsp 15	light cream;cream single	milk	6.38
cream of tartar	other		1.7	0	0	0	61.5	0	0.2	52	258	36.8		tsp 3	tartar;potassium bitartrate	
psyllium	other												4.5		psyllium husk;psyllium husks;psyllium powder;psyllium husk powder;ground psyllium;psyllium seed husk	`;

export const larderLines = (): string[] => LARDER_ROWS.split("\n");
