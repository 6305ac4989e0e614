package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.document.BrushingSheet;
import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheetPair;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.render.Printer;
import icequill.render.words.Sentences;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.BrushingLoader;
import icequill.shop.FormName;
import icequill.work.Caution;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.money.MonetaryAmount;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Brushing sheets of the invented shop. A ten-minute brushing costs about 150 by common practice. */
@Tag("wide")
class BrushingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** 52.00 + 98.00; 10 x 22.00 / 60 = 3.67; 150.00 - 3.67 - 8.00; 120 x 22.00 / 60 + 8.00. */
    @Test
    void sheet_bakery_figuresByHand() {
        Comparison comparison = sheet("crumb-lane-bakery", DAY, Language.ENGLISH).comparison();

        assertThat(comparison.ours()).extracting(charge -> Amounts.plain(charge.net())).containsExactly("52.00",
                "98.00");
        assertThat(plain(comparison)).containsExactly("150.00", "3.67", "8.00", "138.33", "52.00");
    }

    /** 15 x 24.50 / 60 = 6.125; 150.00 - 6.13 - 8.00; 180 x 24.50 / 60 + 8.00. */
    @Test
    void sheet_hotel_figuresByHandAndReasons() {
        BrushingSheet sheet = sheet("hotel-fernhill", DAY, Language.ENGLISH);

        assertThat(plain(sheet.comparison())).containsExactly("150.00", "6.13", "8.00", "135.87", "81.50");
        assertThat(sheet.yours()).extracting(machine -> machine.id()).containsExactly("floor-3");
        assertThat(sheet.left()).extracting(left -> left.machine().id() + " " + left.reasons()).containsExactly(
                "lobby-bar [HEAD, HARD_WIRED]", "main-kitchen [REMOTE, HARD_WIRED]", "banquet [REMOTE, HARD_WIRED]",
                "floor-6 [BEHIND_PANEL]", "pool-bar [WATER_COOLED]");
    }

    /**
     * What is printed adds up: 0.1 calls and what each costs, one visit that was paid for, less twelve brushings of one's own. The
     * baseline is the condenser brushed as it is now: more bought brushings leave fewer calls to spare.
     */
    @Test
    void savings_bakery_addUpAndCountFromTheBrushingOfNow() throws Exception {
        BrushingSheet.Savings once = sheet("crumb-lane-bakery", DAY, Language.ENGLISH).savings().orElseThrow();
        Path file = folder.resolve("brushing/crumb-lane-bakery.yaml");
        Files.writeString(file, Files.readString(file).replace("bought: 1\n", "bought: 12\n"));
        BrushingSheet.Savings often = sheet("crumb-lane-bakery", DAY, Language.ENGLISH).savings().orElseThrow();

        assertThat(Amounts.plain(once.bought())).isEqualTo("150.00");
        MonetaryAmount exact = once.spared().add(once.bought()).subtract(
                sheet("crumb-lane-bakery", DAY, Language.ENGLISH).comparison().year().amount());
        assertThat(Amounts.number(exact.subtract(once.kept())).abs().doubleValue()).isLessThanOrEqualTo(25);
        assertThat(often.calls()).isLessThan(once.calls());
        assertThat(Amounts.number(often.spared()).doubleValue()).isBetween(0.0, 10.0);
    }

    /**
     * One clock of 2.2 and 10 of 20 (shape about 2.5724, scale about 13.838), brushed on the day itself, and a call of a minimum hour:
     * 52.00 + 98.00. Brushed by nobody it brings .5337 calls in a year, after a bought brushing in the middle of it .2222, brushed
     * every month .0139, as simulations found: (.5337 - .0139) x 150.00 = 77.97, (.2222 - .0139) x 150.00 = 31.245 and one paid
     * visit of 52.00 + 98.00. Both less twelve brushings of one's own and the brush, 52.00: 25.97 and 129.245, to the nearest 50.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.5, 77.97, 0.00, 50", "1, 0.2, 31.245, 150.00, 150", "2, 0.1, , 300.00, 250"})
    void savings_oneClock_countFromTheBrushingsBought(int bought, double calls, Double spared, String visits, int kept)
            throws Exception {
        oneClock(bought);

        BrushingSheet sheet = sheet("crumb-lane-bakery", DAY, Language.ENGLISH);
        BrushingSheet.Savings savings = sheet.savings().orElseThrow();

        assertThat(savings.calls().doubleValue()).isEqualTo(calls);
        if (spared != null) {
            assertThat(Amounts.number(savings.spared()).doubleValue()).isCloseTo(spared, within(0.0125));
        }
        assertThat(Amounts.plain(savings.bought())).isEqualTo(visits);
        assertThat(Amounts.number(savings.kept()).intValueExact()).isEqualTo(kept);
        assertThat(Amounts.plain(sheet.comparison().year().amount())).isEqualTo("52.00");
    }

    /** A bought brushing costs the service call and the minimum hour of the day's prices, whatever they are: 70.00 + 120.00. */
    @Test
    void savings_otherPrices_boughtBrushingsArePricedByThem() throws Exception {
        oneClock(2);
        change("pricing/service-call.yaml", "standard: 52.00", "standard: 70.00");
        change("pricing/labor.yaml", "98.00", "120.00");

        BrushingSheet.Savings savings = sheet("crumb-lane-bakery", DAY, Language.ENGLISH).savings().orElseThrow();

        assertThat(Amounts.plain(savings.bought())).isEqualTo("380.00");
    }

    private void oneClock(int bought) throws Exception {
        change("brushing/crumb-lane-bakery.yaml", "bought: 1", "bought: " + bought);
        change("brushing/crumb-lane-bakery.yaml", "lastBrushed: 2026-03-04", "lastBrushed: " + DAY);
        String rates = "pricing/forecast.yaml";
        change(rates, "sitesDiffer: {usual: 30, low: 15, high: 50}", "sitesDiffer: {usual: 0, low: 0, high: 0}");
        change(rates, "usual: {by6: 2, by12: 9}", "usual: {by6: 2.2, by12: 10}");
        change(rates, "yeast: {condenser: 1.2", "yeast: {condenser: 1");
        Path file = folder.resolve(rates);
        String text = Files.readString(file);
        String call = "[{id: a, name: {en: a, es: a}, share: 1, band: standard, minutes: 40, on: cleaning}]\n";
        Files.writeString(file, text.substring(0, text.indexOf("calls:\n")) + "calls:\n  random: " + call
                + "  condenser: " + call + "  water: " + call + text.substring(text.indexOf("beside:")));
    }

    private void change(String name, String from, String to) throws Exception {
        Path file = folder.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    /** On a Saturday, a holiday or the day when clocks change, the price is still that of standard hours. */
    @ParameterizedTest
    @CsvSource({"2026-05-23", "2026-05-25", "2026-07-04", "2026-11-01", "2026-03-08", "2026-12-25"})
    void sheet_anyDay_pricedInStandardHours(LocalDate day) {
        assertThat(Amounts.plain(sheet("crumb-lane-bakery", day, Language.ENGLISH).comparison().visit().amount()))
                .isEqualTo("150.00");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void sheet_says_whatIsWhoseAndTheCautionsOfBrushing(Language language) {
        BrushingSheet sheet = sheet("hotel-fernhill", DAY, language);
        Sentences sentences = Sentences.of(language, "US");
        String html = Printer.of(folder).html(sheet).orElseThrow().text().replace("&#39;", "'");

        Stream.of("who", "note", "brush", "do.4", "not.2", "reason.hard-wired", "log")
                .forEach(key -> assertThat(html).containsIgnoringCase(sentences.word("brushing." + key)));
        assertThat(html.split("<th scope=\"col\">[0-9]", -1)).as("months of the log").hasSize(13);
        assertThat(html).contains(language.equals(Language.ENGLISH) ? "your figure" : "cifras suyas");
        assertThat(sheet.cautions()).containsExactly(Caution.UNPLUGGED, Caution.SHARP_FINS, Caution.NYLON_BRUSH_ONLY,
                Caution.GAS_SUSPECTED, Caution.CERTIFIED_REFRIGERANT, Caution.QUALIFIED_ELECTRICAL,
                Caution.LOCAL_RULES);
    }

    /** One side for each language, with all its cautions. */
    @ParameterizedTest
    @ValueSource(strings = {"hotel-fernhill", "crumb-lane-bakery"})
    void pair_everyDemoSite_twoSheets(String site) throws Exception {
        BrushingSheetPair pair = new BrushingLoader(DemoShop.read(folder))
                .of(FormName.file(folder.resolve("brushing/" + site + ".yaml")), DAY)
                .then(hand -> hand.pair(DAY, Optional.empty())).orElseThrow();
        Printer printer = Printer.of(folder);
        byte[] pdf = printer.html(pair).then(html -> printer.pdf(pair, html, List.of(), Map.of())).orElseThrow();

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(4);
        }
    }

    /** A front of one page, whatever the shop's picture, the language, the sheet's size, and with three machines to brush. */
    @ParameterizedTest
    @CsvSource({"letter, en", "letter, es", "a4, en", "a4, es"})
    void front_logoAndSeveralMachines_onOnePage(String size, Language language) throws Exception {
        ImageIO.write(new BufferedImage(900, 300, BufferedImage.TYPE_INT_RGB), "png",
                folder.resolve("logo.png").toFile());
        change("shop.yaml", "paper: letter", "paper: " + size + "\nlogo: logo.png");
        change("sites/hotel-fernhill.yaml", "cooling: water", "cooling: air");
        change("brushing/hotel-fernhill.yaml", "[floor-3]", "[floor-3, floor-6, pool-bar]");
        BrushingSheet sheet = sheet("hotel-fernhill", DAY, language);
        Printer printer = Printer.of(folder);
        byte[] pdf = printer.html(sheet).then(html -> printer.pdf(sheet, html, List.of(), Map.of())).orElseThrow();

        assertThat(sheet.yours()).hasSize(3);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getPage(1).getResources().getXObjectNames()).isNotEmpty();
        }
    }

    /** Four and more share one log, so that it stays on the wall; a hand writes in rows of 10 mm, which are 28.3 points. */
    @ParameterizedTest
    @CsvSource({"letter, en", "letter, es", "a4, en", "a4, es"})
    void front_sixMachines_oneLogForAllByHand(String size, Language language) throws Exception {
        change("shop.yaml", "paper: letter", "paper: " + size);
        change("sites/hotel-fernhill.yaml", "cooling: water", "cooling: air");
        Path site = folder.resolve("sites/hotel-fernhill.yaml");
        String text = Files.readString(site);
        String like = text.substring(text.indexOf("  - id: floor-6"), text.indexOf("  - id: pool-bar"));
        for (String more : List.of("7", "8", "9")) {
            text = text.stripTrailing() + "\n"
                    + like.replace("floor-6", "floor-" + more).replace("sixth", "floor " + more)
                            .replace("QD-400-7714", "QD-400-880" + more);
        }
        Files.writeString(site, text);
        change("brushing/hotel-fernhill.yaml", "[floor-3]", "[floor-3, floor-6, pool-bar, floor-7, floor-8, floor-9]");
        BrushingSheet sheet = sheet("hotel-fernhill", DAY, language);
        Printer printer = Printer.of(folder);
        byte[] pdf = printer.html(sheet).then(html -> printer.pdf(sheet, html, List.of(), Map.of())).orElseThrow();
        Sentences sentences = Sentences.of(language, "US");

        assertThat(sheet.yours()).hasSize(6);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            Map<String, Float> front = lines(document);
            String date = sentences.word("brushing.day");
            String initials = sentences.word("brushing.by");
            assertThat(front).containsKeys(date, initials);
            assertThat(front.getOrDefault(initials, 0f) - front.getOrDefault(date, 0f)).isGreaterThan(28.3f);
        }
    }

    /** The first words of the front's lines, and how far down they stand. */
    private static Map<String, Float> lines(PDDocument document) throws IOException {
        Map<String, Float> lines = new HashMap<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                lines.put(text.split("[: ]", 2)[0], positions.getFirst().getYDirAdj());
            }
        };
        stripper.setEndPage(1);
        stripper.getText(document);
        return lines;
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', value = {
            "minutes: 10 | minutes: 0 | OUT_OF_RANGE brushing/crumb-lane-bakery.yaml:5 | from 1 to 480",
            "wage: 22.00 | wage: 22.005 | OUT_OF_RANGE brushing/crumb-lane-bakery.yaml:6 | finer than USD is paid",
            "brush: 8.00 | brusch: 8.00 | UNKNOWN_KEY brushing/crumb-lane-bakery.yaml:7 | did you mean \"brush\"?",
            "[proof-room] | [prof-room] | UNKNOWN_NAME brushing/crumb-lane-bakery.yaml:10 | did you mean \"proof-room\"?",
            "[proof-room] | [] | NOT_ALLOWED brushing/crumb-lane-bakery.yaml:4 | proof-room [BEHIND_PANEL]",
            "crumb-lane-bakery | pennon-wharf-taproom | UNKNOWN_NAME brushing/crumb-lane-bakery.yaml:10 | back-bar",
            "crumb-lane-bakery | crumb-lan-bakery | UNKNOWN_NAME brushing/crumb-lane-bakery.yaml:4 | did you mean"})
    void sheet_wrongRequest_aProblemWithItsPlace(String right, String wrong, String where, String message)
            throws Exception {
        Path file = folder.resolve("brushing/crumb-lane-bakery.yaml");
        Files.writeString(file, Files.readString(file).replace(right, wrong));

        List<Problem> problems = DemoShop.office(folder)
                .brushing(FormName.file(file), new PaperOptions(Optional.empty(), DAY, Optional.empty(), Extras.NONE))
                .problems();

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().reference())
                .containsExactly(where);
        assertThat(problems.getFirst().text()).contains(message);
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    private static List<String> plain(Comparison comparison) {
        return Stream.<MonetaryAmount>of(comparison.visit().amount(), comparison.own().amount(), comparison.brush(),
                comparison.difference().amount(), comparison.year().amount()).map(Amounts::plain).toList();
    }

    private BrushingSheet sheet(String name, LocalDate day, Language language) {
        return new BrushingLoader(DemoShop.read(folder))
                .of(FormName.file(folder.resolve("brushing/" + name + ".yaml")), day)
                .then(hand -> hand.sheet(day, Optional.of(language))).orElseThrow();
    }
}
