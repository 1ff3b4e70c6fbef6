package said

import "strings"

// languages are a baker's words for the steps, with the English word
// that stepNamed knows: nouns and infinitives in German, French, Italian,
// Spanish, Swedish, Danish and Norwegian, Finnish and Polish. Common
// practice, no source.
var languages = []struct{ english, words string }{
	{"mix",
		"mischen; vermischen; verrühren; rühren; verkneten; einarbeiten; unterkneten; unterrühren"},
	{"mix", "teig kneten; auskneten; mélanger; mélange; pétrissage; fraser; incorporer; ajouter"},
	{"mix",
		"impasto; impastamento; mescolare; incorporare; amasar; amasado; mezclar; blanda; arbeta"},
	{"mix", "knåda in; ælte; elte; røre; bland; blande; vaivaa; sekoita; wyrabiać; wymieszać"},
	{"soak",
		"einweichen; quellen; hydrater; délayer; tremper; ammollo; ammollare; remojar; blötlägg"},
	{"soak", "autolyse; autolysis; autolisi; autolyser"},
	{"bloom",
		"sponge; vorteig ansetzen; dampfl; ansatz; aktivieren; activer; attivare; smula jäst"},
	{"rest",
		"ruhe; teigruhe; stockgare; gehen; gehen lassen; aufgehen; ruhen lassen; rasten; gären"},
	{"rest",
		"entspannen; repos; reposer; laisser reposer; détente; pousse; pousser; première pousse"},
	{"rest",
		"puntata; riposo; riposare; prima lievitazione; lievitazione; reposo; reposar; levado"},
	{"rest",
		"jäsning; jäs; vila; hvile; heve; hev; hæve; hævning; raske; kohota; kohotus; wyrastanie"},
	{"proof",
		"stückgare; endgare; gare; zweite gare; deuxième pousse; seconde pousse; pousse finale"},
	{"proof",
		"appretto; seconda lievitazione; levado final; efterjäsning; efterhævning; etterheving"},
	{"knock back",
		"zusammenschlagen; zusammenstoßen; rabattre; dégazer; dégazage; sgonfiare; slå ned"},
	{"fold",
		"falten; dehnen und falten; plier; pliage; pieghe; piegare; vik; fold sammen; taittele"},
	{"turn", "tour; tourage; tourer; tourieren; giro"},
	{"lock in", "einschlagen; enchâsser; beurrage; incasso; incassare"},
	{"chill",
		"kühlen; kaltstellen; kalt stellen; froid; au froid; bloquer; blocage; réfrigérer; frigo"},
	{"chill", "raffreddare in frigo; enfriar; kyl; køl; kjøl; kjøle; kjøling"},
	{"freeze", "einfrieren; frieren; congeler; surgeler; congelare; frys; fryse; pakasta"},
	{"thaw", "auftauen; décongeler; scongelare; tina; tø op; tine; sulata"},
	{"sheet",
		"ausrollen; flachrollen; abaisser; étaler; étalage; laminer; stendere; stesura; estirar"},
	{"sheet",
		"kavla; kavla ut; kjevle; kjevle ut; rulle ud; kauli; rozwałkować; aplatir; abbassare"},
	{"roll up",
		"aufrollen; einrollen; rouler; arrotolare; enrollar; rulla; rulla ihop; rull; rulle"},
	{"fill", "füllen; befüllen; einfüllen; garnir; fourrer; farcire; rellenar; fyll; fylde; fylle"},
	{"fill", "inject; injecter; täytä; nadziać"},
	{"divide", "teilen; abwiegen; abstechen; einteilen; schneiden; diviser; détailler; détaillage"},
	{"divide",
		"découper; peser; pesage; detail; spezzatura; spezzare; tagliare; dividir; cortar; dela"},
	{"divide", "skär; dele; del; skjær; skære; jaa; leikkaa; podzielić"},
	{"shape", "formen; aufarbeiten; wirken; rundwirken; langwirken; schleifen; flechten; façonner"},
	{"shape", "bouler; mise en forme; tresser; tressage; formatura; formare; pirlare; pirlatura"},
	{"shape", "intrecciare; formar; forma; forme; formning; fläta; flette; muotoile; uformować"},
	{"pan", "in die form; einlegen; absetzen; aufs blech; mouler; plaquer; foncer; enmoldar"},
	{"egg wash", "dorer; dorage; mit ei bestreichen; ei streichen; dorare; pincelar"},
	{"glaze",
		"glasieren; bestreichen; abstreichen; abglänzen; badigeonner; glacer; glaçage; lustrer"},
	{"glaze",
		"napper; pennellare; glassare; pensla; pensle; glasera; glasere; voitele; syrup; nappage"},
	{"ice", "aprikotieren; abricoter; überziehen; fondant; lukrować; kuorruta"},
	{"dust", "bestreuen; bestäuben; bemehlen; saupoudrer; parsemer; cospargere; spolverare"},
	{"dust", "strö; drysse; dryss; pudra; posypać; ripottele"},
	{"score",
		"einschneiden; stüpfeln; einstechen; inciser; lamer; grigner; piquer; incidere; bucare"},
	{"score", "snitta; nagga; snitte; prikke; nacke"},
	{"handle",
		"scrape; scrape down; scrape bowl; auskratzen; corner; racler; raschiare; skrapa; skrape"},
	{"handle", "sieben; tamiser; tamisage; setacciare; sikta; sikte; démouler; stürzen; sformare"},
	{"handle",
		"vorheizen; préchauffer; preriscaldare; fetten; einfetten; beurrer le moule; chemiser"},
	{"bake",
		"abbacken; ausbacken im ofen; enfourner; cottura; infornare; hornear; hornea; baka; bage"},
	{"bake", "steke; stek; paista; piec; upiec; cuire au four"},
	{"fry", "ausbacken; frittieren; fritieren; frire; friture; friggere; freír; fritera; fritere"},
	{"cook", "kochen; aufkochen; erhitzen; chauffer; cuocere in pentola; cocer; koka; koge; koke"},
	{"melt", "schmelzen; zerlassen; fondre; faire fondre; sciogliere; fondere; smälta; smelte"},
	{"cool",
		"abkühlen; auskühlen; abkühlen lassen; refroidir; refroidissement; raffreddare; svalna"},
	{"cool", "låt svalna; afkøle; avkjøle; køle af; jäähdytä; wystudzić"},
	{"rest",
		"bench; bench time; bench proof; table rest; intermediate proof; zwischengare; bancata"},
}

// StepWords calls add for each word of another language, with the
// English word that means it.
func StepWords(add func(word, english string)) {
	for _, l := range languages {
		for _, word := range strings.Split(l.words, "; ") {
			add(word, l.english)
		}
	}
}
