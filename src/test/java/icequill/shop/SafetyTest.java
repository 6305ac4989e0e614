package icequill.shop;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.document.Paper;
import icequill.papers.RecordAssembly;
import icequill.papers.WorkSheetAssembly;
import icequill.party.Language;
import icequill.render.Printer;
import icequill.work.Hazard;
import icequill.work.SafetyPaper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What each paper says of each hazard, asked from the hazard's side: work that has it is put into a shop's files, and the words that
 * keep people from harm must stand on the paper, in both languages; work that has it not does without them.
 */
class SafetyTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 9);
    private static final String BAKERY = "sites/crumb-lane-bakery.yaml";
    private static final String MERCADO = "sites/mercado-del-mar.yaml";
    private static final String HOTEL = "sites/hotel-fernhill.yaml";
    private static final String CLEANING = "planned/summer-cleaning-bakery.yaml";
    private static final String FLAKES = "planned/limpieza-mercado.yaml";
    private static final String CONDENSERS = "planned/autumn-condensers-hotel.yaml";
    private static final String SURVEY = "planned/survey-bakery.yaml";
    private static final String BRUSHING = "brushing/crumb-lane-bakery.yaml";
    private static final Edit NO_REFRIGERANT = new Edit(BAKERY, "    refrigerant: R-290\n", "");
    private static final Edit DISPENSER = new Edit(BAKERY, "storage: bin", "storage: dispenser");
    private static final Edit NO_STORAGE = new Edit(BAKERY, "    storage: bin\n", "");
    private static final Edit NO_ROOF = new Edit(HOTEL,
            "roof: Condensers of the main and banquet kitchens, by the stair beside elevator C.\n", "");

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    /** A text in a shop's file that is replaced wherever it stands. */
    record Edit(String file, String right, String wrong) {}

    /**
     * Work, and what its paper must say of a hazard, or must not.
     *
     * @param said whether the hazard is there
     */
    record Row(Hazard hazard, SafetyPaper paper, String file, List<Edit> edits, boolean said, String english,
            String spanish) {}

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    static Stream<Row> rows() {
        return Stream.of(
                says(Hazard.CHEMICAL, CLEANING,
                        "Label of the product, its safety data sheet; chemical-resistant gloves",
                        "etiqueta, hoja de datos de seguridad y manual; guantes para químicos"),
                says(Hazard.ACID, CLEANING,
                        "gloves that resist acid; closed goggles; cleaner into water, never water into",
                        "guantes resistentes al ácido; gafas cerradas; limpiador en el agua, nunca agua en"),
                hushed(Hazard.ACID, CONDENSERS, "gloves that resist acid", "guantes resistentes al ácido"),
                says(Hazard.POISONOUS_GAS, CLEANING,
                        "poisonous gas with acid cleaner, with ammonia or quaternary; peracid",
                        "gas venenoso con el limpiador ácido; amonio cuaternario; perácidos"),
                says(Hazard.CHEMICAL_LEFT_ALONE, CLEANING, "Chemicals inside, do not use", "Químicos adentro, no usar"),
                says(Hazard.CHEMICAL_LEFT_ALONE, FLAKES, "Chemicals inside, do not use", "Químicos adentro, no usar"),
                hushed(Hazard.CHEMICAL_LEFT_ALONE, CONDENSERS, "do not use", "no usar"),
                says(Hazard.CHEMICAL_LEFT_TOO_LONG, CLEANING, "be at the machine when it rings",
                        "esté junto a la máquina cuando suene"),
                hushed(Hazard.CHEMICAL_LEFT_TOO_LONG, CONDENSERS, "Set the timer before", "Ponga el temporizador"),
                says(Hazard.RESIDUE, CLEANING,
                        "at the strength of its label; Bleach, if it is used at all, only on surfaces",
                        "a la concentración de su etiqueta; El cloro, si se usa, solo en superficies"),
                says(Hazard.SPOILED_ICE, CLEANING, "Throw the first ice away", "deseche el primer hielo"),
                says(Hazard.START_BY_PLUG, CLEANING, "keep it in your own hand", "téngalo en su propia mano"),
                hushed(Hazard.START_BY_PLUG, FLAKES, "keep it in your own hand", "téngalo en su propia mano"),
                says(Hazard.START_BY_PLUG, SafetyPaper.BRUSHING_SHEET, BRUSHING, "keep it in your own hand",
                        "téngalo en su propia mano"),
                says(Hazard.START_BY_SWITCH, FLAKES, "disconnect or breaker, locked and tagged; stored charge is gone",
                        "con candado y etiqueta en el seccionador o disyuntor; carga almacenada"),
                hushed(Hazard.START_BY_SWITCH, CLEANING, "disconnect or breaker", "seccionador o disyuntor"),
                says(Hazard.SECOND_FEED, FLAKES, "lock and tag both feeds", "candado y etiqueta en las dos"),
                hushed(Hazard.SECOND_FEED, CLEANING, "both feeds", "etiqueta en las dos"),
                says(Hazard.POWER_RETURNS, CLEANING, "hands, tools and rags out; everybody told",
                        "manos, herramientas y trapos fuera; todos avisados"),
                says(Hazard.POWER_RETURNS, CONDENSERS, "hands, tools and rags out",
                        "manos, herramientas y trapos fuera"),
                hushed(Hazard.POWER_RETURNS, SURVEY, "hands, tools and rags out", "manos, herramientas y trapos"),
                says(Hazard.AUGER, FLAKES, "Always de-energized first, gloves and eye protection",
                        "Siempre sin corriente primero, con guantes y protección para los ojos"),
                says(Hazard.AUGER, CLEANING, "Always de-energized first", "Siempre sin corriente primero", DISPENSER),
                says(Hazard.AUGER, CLEANING, "Always de-energized first", "Siempre sin corriente primero", NO_STORAGE),
                hushed(Hazard.AUGER, CLEANING, "Always de-energized first", "Siempre sin corriente primero"),
                says(Hazard.BELOW_CIRCULATION, CLEANING, "curtain and panels closed, gloves and goggles on",
                        "cortina y paneles cerrados, guantes y gafas puestos"),
                hushed(Hazard.BELOW_CIRCULATION, FLAKES, "curtain and panels", "cortina y paneles"),
                says(Hazard.FINS, CLEANING, "cut-resistant gloves at the condenser; Soft nylon brush",
                        "guantes anticorte en el condensador; Cepillo suave de nailon"),
                hushed(Hazard.FINS, FLAKES, "cut-resistant gloves", "guantes anticorte"),
                says(Hazard.FINS, SafetyPaper.BRUSHING_SHEET, BRUSHING,
                        "cut-resistant gloves at the condenser; nylon brush",
                        "guantes anticorte en el condensador; Cepillo suave de nailon"),
                says(Hazard.FALL, CONDENSERS, "keep away from the edge; Ladder: sound; three points of contact",
                        "lejos del borde; Escalera: en buen estado; tres puntos de apoyo"),
                says(Hazard.FALL, CONDENSERS, "keep away from the edge; Ladder: sound", "lejos del borde; Escalera",
                        NO_ROOF),
                says(Hazard.FALL, CLEANING, "keep away from the edge; Ladder: sound", "lejos del borde; Escalera",
                        new Edit(BAKERY, "miles:", "roof: By the hatch.\nmiles:")),
                hushed(Hazard.FALL, CONDENSERS, "keep away from the edge", "lejos del borde",
                        new Edit(HOTEL, "    storage: bin\n", "    storage: bin\n    groundLevel: true\n"),
                        new Edit(HOTEL, "    groundLevel: true\n    groundLevel: true\n", "    groundLevel: true\n")),
                hushed(Hazard.FALL, CLEANING, "keep away from the edge", "lejos del borde"),
                says(Hazard.FLAMMABLE_REFRIGERANT, CLEANING,
                        "no flame, no spark; Ventilate; Only technicians trained for it; touch no switch or plug",
                        "sin llamas, sin chispas; Ventile; solo trabajan técnicos capacitados; no toque interruptores"),
                says(Hazard.FLAMMABLE_REFRIGERANT, CLEANING, "no flame, no spark; not recorded, so taken to burn",
                        "sin llamas, sin chispas; no anotado, así que se toma por inflamable", NO_REFRIGERANT),
                says(Hazard.FLAMMABLE_REFRIGERANT, CONDENSERS, "no flame, no spark", "sin llamas, sin chispas"),
                hushed(Hazard.FLAMMABLE_REFRIGERANT, FLAKES, "no spark", "sin chispas"),
                says(Hazard.FLAMMABLE_REFRIGERANT, FLAKES, "no flame, no spark; R-454C: burns",
                        "sin llamas, sin chispas; R-454C: arde", new Edit(MERCADO, "R-448A", "R-454C")),
                says(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.VISIT_RECORD, "visits/spring-cleaning-bakery.yaml",
                        "hisses, was damaged; may have no smell; no switch and no plug; emergency number from outside, then us",
                        "silba, se dañó; puede no tener olor; ni enchufes; emergencias desde afuera y después a nosotros"),
                says(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.VISIT_RECORD, "visits/included-visit-hotel.yaml",
                        "no switch and no plug; nobody recorded: ", "ni enchufes; nadie anotó: "),
                hushed(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.VISIT_RECORD, "visits/goodwill-clinic.yaml",
                        "no switch and no plug", "ni enchufes"),
                says(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.BRUSHING_SHEET, BRUSHING,
                        "hisses, was damaged; no flame, no spark; emergency number from outside, then us",
                        "silba, se dañó; sin llamas, sin chispas; emergencias desde afuera y después a nosotros"),
                says(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.BRUSHING_SHEET, BRUSHING, "no flame, no spark",
                        "sin llamas, sin chispas", NO_REFRIGERANT),
                hushed(Hazard.FLAMMABLE_REFRIGERANT, SafetyPaper.BRUSHING_SHEET, BRUSHING, "no spark", "sin chispas",
                        new Edit(BAKERY, "R-290", "R-134a")),
                says(Hazard.REFRIGERANT, CLEANING, "only by technicians certified", "solo técnicos certificados"),
                says(Hazard.REFRIGERANT, SafetyPaper.BRUSHING_SHEET, BRUSHING, "only by technicians certified",
                        "solo técnicos certificados"),
                says(Hazard.LIVE_PARTS, CLEANING, "only by people qualified for it",
                        "solo personas calificadas para ello"),
                says(Hazard.LIVE_PARTS, SafetyPaper.BRUSHING_SHEET, BRUSHING, "only by people qualified for it",
                        "solo personas calificadas para ello"),
                says(Hazard.WATER_PRESSURE, CLEANING,
                        "pressure let out before you open a filter; Water off; Pressure let out; Cartridge flushed",
                        "presión liberada antes de abrir un filtro; Agua cerrada; Presión fuera; Cartucho enjuagado"),
                hushed(Hazard.WATER_PRESSURE, FLAKES, "before you open a filter", "antes de abrir un filtro"),
                says(Hazard.LOCAL_LAW, CLEANING, "Local codes and the rules of licensed trades",
                        "Los reglamentos locales y las normas de los oficios con licencia"),
                says(Hazard.LOCAL_LAW, SafetyPaper.BRUSHING_SHEET, BRUSHING,
                        "Local codes and the rules of licensed trades",
                        "Los reglamentos locales y las normas de los oficios con licencia"));
    }

    private static Row says(Hazard hazard, String file, String english, String spanish, Edit... edits) {
        return new Row(hazard, SafetyPaper.WORK_SHEET, file, List.of(edits), true, english, spanish);
    }

    private static Row says(Hazard hazard, SafetyPaper paper, String file, String english, String spanish,
            Edit... edits) {
        return new Row(hazard, paper, file, List.of(edits), true, english, spanish);
    }

    private static Row hushed(Hazard hazard, String file, String english, String spanish, Edit... edits) {
        return new Row(hazard, SafetyPaper.WORK_SHEET, file, List.of(edits), false, english, spanish);
    }

    private static Row hushed(Hazard hazard, SafetyPaper paper, String file, String english, String spanish,
            Edit... edits) {
        return new Row(hazard, paper, file, List.of(edits), false, english, spanish);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void paper_workWithAHazard_saysWhatKeepsPeopleFromIt(Row row) throws Exception {
        for (Edit edit : row.edits()) {
            String text = Files.readString(folder.resolve(edit.file()));
            assertThat(text).contains(edit.right());
            Files.writeString(folder.resolve(edit.file()), text.replace(edit.right(), edit.wrong()));
        }
        for (Language language : List.of(Language.ENGLISH, Language.SPANISH)) {
            String text = text(row, language);
            String words = language.equals(Language.ENGLISH) ? row.english() : row.spanish();
            for (String each : words.split("; ", -1)) {
                if (row.said()) {
                    assertThat(text).contains(each);
                } else {
                    assertThat(text).doesNotContain(each);
                }
            }
        }
    }

    /** No row of the table goes untried. */
    @Test
    void hazards_everyPaperThatSpeaksOfOne_isTriedAbove() {
        for (Hazard hazard : Hazard.values()) {
            for (SafetyPaper paper : SafetyPaper.values()) {
                boolean tried = rows().anyMatch(row -> row.said() && row.hazard() == hazard && row.paper() == paper);
                assertThat(tried).as(hazard + " " + paper).isEqualTo(!hazard.cautions(paper).isEmpty());
            }
        }
        assertThat(Arrays.stream(Hazard.values()).filter(Hazard::isAlways)).containsExactlyInAnyOrder(Hazard.CHEMICAL,
                Hazard.POISONOUS_GAS, Hazard.RESIDUE, Hazard.SPOILED_ICE, Hazard.REFRIGERANT, Hazard.LIVE_PARTS,
                Hazard.LOCAL_LAW);
    }

    /** As a reader has it: without tags and line breaks. */
    private String text(Row row, Language language) {
        String html = Printer.of(folder).html(paper(row, language)).orElseThrow().text();
        return html.substring(html.indexOf("<body>")).replaceAll("<[^>]*>", " ").replace("&#39;", "'")
                .replace("&quot;", "\"").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    private Paper paper(Row row, Language language) {
        ShopFolder shop = DemoShop.read(folder);
        Path file = folder.resolve(row.file());
        return switch (row.paper()) {
        case WORK_SHEET ->
            new VisitLoader(shop).of(FormName.file(file)).then(
                    hand -> new WorkSheetAssembly(hand, language, Map.of()).sheets(DAY)
                            .map(sheets -> sheets.getFirst().sheet()))
                    .orElseThrow();
        case VISIT_RECORD ->
            new VisitLoader(shop).of(FormName.file(file)).map(hand -> new RecordAssembly(hand, language).record(DAY))
                    .orElseThrow();
        case BRUSHING_SHEET ->
            new BrushingLoader(shop).of(FormName.file(file), DAY).then(hand -> hand.sheet(DAY, Optional.of(language)))
                    .orElseThrow();
        };
    }
}
