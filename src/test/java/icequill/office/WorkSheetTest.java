package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.DemoShop;
import icequill.document.Schedule;
import icequill.document.WorkSheet;
import icequill.files.paper.PaperJson;
import icequill.papers.WorkSheetAssembly;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.Printer;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.VisitLoader;
import icequill.work.MachineState;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work sheets of the invented shop's planned visits. */
@Tag("wide")
class WorkSheetTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** For the machine of 350 lb; 6 fl oz of descaler and 1.5 of sanitizer a gallon are the labels' most. */
    @Test
    void sheet_fullCleaning_hasEveryStepWithItsState() {
        assertThat(sheet("summer-cleaning-bakery", Language.ENGLISH).jobs().getFirst().steps())
                .extracting(step -> step.state() + " " + step.attended() + "+" + step.unattended() + " "
                        + step.procedure().flushes() + " " + step.doses().stream().map(WorkSheetTest::plain).toList())
                .containsExactly("MAKING_ICE 5+15 0 []", "CIRCULATING 6+0 0 []", "DE_ENERGIZED 0+0 0 []",
                        "DE_ENERGIZED 10+0 0 []", "DE_ENERGIZED 12+0 0 []", "DE_ENERGIZED 8+0 0 []",
                        "CIRCULATING 0+0 0 []", "CIRCULATING 3+20 0 [16 in 3, at most 18]",
                        "CIRCULATING 9+0 3 []", "CIRCULATING 2+10 0 [2 in 1.5, at most 2.25]", "CIRCULATING 8+0 0 []",
                        "MAKING_ICE 4+0 0 []", "MAKING_ICE 5+15 0 []", "MAKING_ICE 2+0 0 []");
    }

    /**
     * From 9:15: 5 + 15, 6, 10 + 12 + 8, so pouring from 10:11 to 10:14; twenty minutes later the flush, by 10:36 at the latest;
     * 9 and 2, the bin within the sanitizer's ten minutes, 4, 5 + 15, 2: done at 11:21.
     */
    @Test
    void sheet_fullCleaning_tellsTheTimetableAndItsAlarms() {
        WorkSheet sheet = sheet("summer-cleaning-bakery", Language.ENGLISH);
        Schedule schedule = sheet.schedule().orElseThrow();

        assertThat(schedule.at(schedule.minutes()).toLocalTime()).isEqualTo(LocalTime.of(11, 21));
        assertThat(schedule.bound()).isEqualTo(126);
        assertThat(sheet.jobs().getFirst().steps().stream().flatMap(step -> step.turn().stream()))
                .extracting(turn -> turn.start() + "-" + turn.over() + "-" + turn.until())
                .containsExactly("0-5-20", "20-26-26", "26-36-36", "36-48-48", "48-56-56", "56-59-79", "79-88-88",
                        "88-90-100", "90-98-98", "100-104-104", "104-109-124", "124-126-126");
        assertThat(schedule.alarms()).extracting(alarm -> alarm.rings().toLocalTime() + " "
                + alarm.latest().map(latest -> latest.toLocalTime() + " ").orElse("")
                + alarm.next().orElseThrow().step() + " " + alarm.next().orElseThrow().people())
                .containsExactly("09:35 ice off, bin emptied, water off [0]",
                        "10:34 10:36 flush three times with clean water [0]",
                        "10:55 restart, and throw the first ice away [0]",
                        "11:19 sticker with date, and signature [0]");
    }

    /** The site's own 10 to 15 minutes for the machine come before the 20 to 25 of the task. */
    @Test
    void sheet_siteWithItsOwnCirculation_givesItsLatestTime() throws Exception {
        Files.writeString(folder.resolve("sites/crumb-lane-bakery.yaml"),
                "layout:\n  circulation: [{machine: proof-room, least: 10, most: 15}]\n", StandardOpenOption.APPEND);

        assertThat(sheet("summer-cleaning-bakery", Language.ENGLISH).schedule().orElseThrow().alarms().get(1).latest()
                .orElseThrow().toLocalTime()).isEqualTo(LocalTime.of(10, 26));
    }

    /** Two people at three machines: the drawing tells them apart by hatching and letter, and says itself in words. */
    @Test
    void sheet_severalMachines_drawsEachWithItsPeople() {
        WorkSheet sheet = sheet("autumn-condensers-hotel", Language.ENGLISH);
        String html = Printer.of(folder).html(sheet).orElseThrow().text().replace('\u00a0', ' ');

        assertThat(html.split("class=\"bars\"", -1)).hasSize(4);
        assertThat(html).contains("<span class=\"strong\">A</span> Ada Quill",
                "<span class=\"strong\">B</span> Teo Lindqvist", ">B</text>",
                "52 minutes if all goes as planned, done at 9:07 AM; 4 of them walking.",
                "8:35 – 8:45 AM brush the condenser along its fins, B");
    }

    /** The plan is done at 11:21: a minute after the lead must leave, and 21 after the site wants it done. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | Ada Quill must leave at 11:20 AM, but is needed until 11:21 AM, 1 min longer | The site wants all to be done by 11:00 AM; it will be 11:21 AM, 21 min later.
            es | Ada Quill debe irse a las 11:20 a. m., pero hace falta hasta las 11:21 a. m., 1 min más | El local quiere todo hecho antes de las 11:00 a. m.; será a las 11:21 a. m., 21 min más tarde.
            """)
    void sheet_wishesThatCannotBeKept_areToldWithByHowMuch(Language language, String overstay, String late)
            throws Exception {
        change("planned/summer-cleaning-bakery.yaml", "left: 2026-07-14T11:30",
                "left: 2026-07-14T11:30\n    mustLeave: 2026-07-14T11:20");
        change("planned/summer-cleaning-bakery.yaml", "people:", "doneBy: 2026-07-14T11:00\npeople:");

        assertThat(Printer.of(folder).html(sheet("summer-cleaning-bakery", language)).orElseThrow().text()
                .replaceAll("[\\h\\s]+", " ")).contains(overstay, late);
    }

    @Test
    void sheet_crowd_hasNoTimetable() throws Exception {
        String person = """
                  - name: Ada Quill
                    grade: lead
                    arrived: 2026-07-14T09:15
                    left: 2026-07-14T11:30
                    on: cleaning
                """;
        change("planned/summer-cleaning-bakery.yaml", person,
                IntStream.range(0, 7).mapToObj(i -> person.replace("Ada", "Ada " + i)).collect(Collectors.joining()));
        WorkSheet sheet = sheet("summer-cleaning-bakery", Language.ENGLISH);

        assertThat(sheet.schedule()).isEmpty();
        assertThat(Printer.of(folder).html(sheet).orElseThrow().text()).doesNotContain("class=\"bars\"", "Alarms");
    }

    @Test
    void sheet_everyDemoPlan_everyStepHasAStateAndNoDoseIsAboveItsLabel() {
        List<WorkSheet.Step> steps = sheets(Language.SPANISH).stream().flatMap(sheet -> sheet.jobs().stream())
                .flatMap(job -> job.steps().stream()).toList();

        assertThat(steps).hasSizeGreaterThan(25).allMatch(step -> step.state() != MachineState.ANY);
        assertThat(steps.stream().flatMap(step -> step.doses().stream())).isNotEmpty().allSatisfy(dose -> {
            WorkSheet.ByLabel label = dose.label().orElseThrow();
            assertThat(dose.quantity().number()).isLessThanOrEqualTo(label.most().number());
        });
    }

    /** Never a cup a gallon. */
    @Test
    void sheet_everyDemoPlan_noCupsAndNoPrices() {
        for (WorkSheet sheet : sheets(Language.ENGLISH)) {
            assertThat(Printer.of(folder).html(sheet).orElseThrow().text()).doesNotContainPattern("\\bcups?\\b");
            assertThat(PaperJson.write(sheet)).doesNotContain("\"unitPrice\"", "\"net\"");
        }
    }

    /** The hotel's limit of 900.00 and its approver; one filter; the bakery's 16 and 2 fl oz, strips and gloves. */
    @Test
    void sheet_beforeDrivingOff_saysWhatToLoadWhomToAskAndTheLimit() throws Exception {
        Files.writeString(folder.resolve("sites/hotel-fernhill.yaml"), """
                contacts:
                  - {name: Nils Aarden, role: night porter, for: [visits], telephone: 555-0166}
                """, StandardOpenOption.APPEND);

        assertThat(text(sheet("autumn-condensers-hotel", Language.ENGLISH))).contains(
                "USD 900.00 before tax; more only after Imre Castell says so", "Water filter cartridge, 1",
                "Nils Aarden, night porter, 555-0166", "Cut-resistant gloves");
        assertThat(text(sheet("summer-cleaning-bakery", Language.ENGLISH))).contains("Nickel-safe descaler, 16 fl oz",
                "Food-contact sanitizer, 2 fl oz", "Sanitizer test strips", "pH strips or meter",
                "Acid gloves, closed goggles").doesNotContain("before tax");
    }

    /** A caution is said in full once, at the first step that it is for, and in a few words at the later ones. */
    @Test
    void sheet_cautions_standAtTheirSteps() {
        String text = text(sheet("summer-cleaning-bakery", Language.ENGLISH));

        assertThat(text.split("keep it in your own hand", -1)).hasSize(2);
        assertThat(text.substring(text.indexOf("3. Power off"), text.indexOf("4. Brush")))
                .contains("keep it in your own hand");
        assertThat(text.substring(text.indexOf("5. Take out"), text.indexOf("6. Change")))
                .contains("Gloves, eyes · Plug in your hand or sight");
        assertThat(text.indexOf("Chlorine makes a poisonous gas")).isLessThan(text.indexOf("1. Readings before"));
    }

    @Test
    void repairSheet_callWithoutTasks_hasRoomForWhatIsFoundAndItsDangers() throws Exception {
        Path call = folder.resolve("planned/call.yaml");
        Files.writeString(call, """
                format: 1
                site: crumb-lane-bakery
                asked: {by: Rosa, at: 2026-06-01T08:10, symptom: No ice since yesterday.}
                people:
                  - {name: Ada Quill, grade: lead, arrived: 2026-06-01T10:00, left: 2026-06-01T11:00, on: repair}
                machines:
                  - {machine: proof-room, complaint: No ice.}
                """);
        WorkSheet sheet = sheet("call", Language.ENGLISH);

        assertThat(sheet.schedule()).isEmpty();
        assertThat(text(sheet)).contains("Repair sheet", "No ice since yesterday.", "Complaint No ice.", "Cause",
                "Correction", "Parts used", "Refrigerant taken out, weighed", "did the customer say yes?",
                "parts until December 31, 2026, labor until December 31, 2025", "keep it in your own hand",
                "curtain and panels closed", "Fins cut", "no flame, no spark", "only by people qualified");
        assertThat(text(sheet("call", Language.SPANISH))).contains("Hoja de reparación", "Causa",
                "téngalo en su propia mano");
    }

    /** As a reader has it. */
    private String text(WorkSheet sheet) {
        String html = Printer.of(folder).html(sheet).orElseThrow().text();
        return html.substring(html.indexOf("<body>")).replaceAll("<[^>]*>", " ").replace("&#160;", " ")
                .replace('\u00a0', ' ')
                .replaceAll("\\s+", " ");
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(delimiter = '|', value = {
            "pricing/materials.yaml | most: 1.5, | most: 1.3, | OUT_OF_RANGE pricing/tasks.yaml:145 | , above its label (at most ",
            "pricing/tasks.yaml | upTo: 800, amount: 16, water: 3 | upTo: 800, amount: 16 | MISSING pricing/tasks.yaml:99 | does not say how much water it goes into (water, in gal)",
            "pricing/tasks.yaml | upTo: 800, amount: 16, | upTo: 800, amount: 18.001, | OUT_OF_RANGE pricing/tasks.yaml:99 | is 18.001 floz, above its label (at most 18 floz in 3 gal)",
            "pricing/materials.yaml | chemistry: other | chemistry: chlorine | '' | ''",
            "planned/summer-cleaning-bakery.yaml | - {task: flush} | - {task: clean-bin} | WRONG_ORDER planned/summer-cleaning-bakery.yaml:12 | the acid cleaner is not flushed out",
            "pricing/tasks.yaml | least: 20, most: 25 | least: 30, most: 25 | WRONG_ORDER pricing/tasks.yaml:101 | at least 30 minutes, but at most 25",
            "pricing/tasks.yaml | record: [ph] | record: [pH] | NOT_ALLOWED pricing/tasks.yaml:131 | did you mean \"ph\"?"})
    void sheet_wrongRatesOrPlan_aProblemWithItsPlace(String file, String right, String wrong, String where,
            String message) throws Exception {
        change(file, right, wrong);

        List<Problem> problems = problems();

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().reference())
                .allMatch(where::equals);
        assertThat(problems.isEmpty()).isEqualTo(where.isEmpty());
        assertThat(problems).allMatch(problem -> problem.text().contains(message));
    }

    /** Everywhere a chemical is used: by a task's dose, in a visit's notes, on a visit's lines. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "descaler | the dose in the task \"circulate-descaler\" is of descaler, which has no label",
            "descaler-bottle | what was used is of descaler-bottle, which has no label"})
    void check_chemicalWithoutALabel_aProblemOfRatesAndVisits(String item, String message) throws Exception {
        Path file = folder.resolve("pricing/materials.yaml");
        String text = Files.readString(file);
        int at = text.indexOf("    label:", text.indexOf("- id: " + item + "\n"));
        Files.writeString(file, text.substring(0, at) + text.substring(text.indexOf('\n', at) + 1));

        assertThat(DemoShop.problems(folder)).extracting(Problem::text)
                .anyMatch(problem -> problem.contains(message)
                        && problem.contains("label: {chemistry, most, per, minutes}"));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', value = {
            "minutes: {least: 10, most: 40} | minutes: {least: 10, most: 24} | from 20 to 25 minutes in the task \"circulate-descaler\", outside its label (from 10 to 24 minutes)",
            "minutes: {least: 10, most: 40} | minutes: {least: 10} | no label of an acid without the longest time",
            "minutes: {least: 10, most: 40} | minutes: {least: 31, most: 30} | at least 31 minutes, but at most 30",
            "', minutes: {least: 10, most: 40}' | '' | \"minutes\" is missing",
            "minutes: {least: 5} | minutes: {least: 11} | from 10 to 12 minutes in the task \"sanitize\", outside its label (at least 11 minutes)"})
    void sheet_timesOutsideTheLabel_aProblem(String right, String wrong, String message) throws Exception {
        change("pricing/materials.yaml", right, wrong);

        assertThat(problems()).extracting(Problem::text).anyMatch(text -> text.contains(message));
    }

    @Test
    void sheet_acidLeftWithoutATimerOrBeyondItsLabel_aProblem() throws Exception {
        change("pricing/tasks.yaml", "    timer: {least: 20, most: 25}", "#");
        assertThat(problems()).extracting(Problem::message)
                .contains("acid is left for 20 minutes without a timer in the task \"circulate-descaler\"");

        change("pricing/tasks.yaml", "#  # common practice; the label",
                "    timer: {least: 20, most: 25}  # common practice; the label");
        Files.writeString(folder.resolve("sites/crumb-lane-bakery.yaml"),
                "layout:\n  circulation: [{machine: proof-room, least: 20, most: 41}]\n", StandardOpenOption.APPEND);
        assertThat(problems()).extracting(Problem::text).singleElement().asString()
                .contains("circulate for 41 minutes in \"proof-room\", longer than its label", "at most 40");
    }

    /** What makes a poisonous gas with chlorine, whichever comes first; the cleaner is written in the demo's rates. */
    @ParameterizedTest
    @ValueSource(strings = {"acid", "ammonia", "quaternary", "peracid"})
    void sheet_chlorineAfterWhatMakesGasOfIt_refused(String cleaner) throws Exception {
        change("pricing/materials.yaml", "chemistry: acid", "chemistry: " + cleaner);
        change("pricing/materials.yaml", "chemistry: other", "chemistry: chlorine");
        assertThat(problems()).isEmpty();

        change("pricing/tasks.yaml", "record: [ph]", "record: [strip]");

        assertThat(problems()).singleElement().matches(
                problem -> problem.message().contains("chlorine follows " + cleaner + " without a pH reading"));
    }

    /** Two minutes away from the cleaner's machine, the alarm rings two minutes before the latest time, or sooner. */
    @Test
    void alarms_farFromTheMachine_leaveTheWalk() throws Exception {
        Files.writeString(folder.resolve("sites/hotel-fernhill.yaml"), "layout: {walk: 4}\n",
                StandardOpenOption.APPEND);
        change("planned/autumn-condensers-hotel.yaml", "{task: change-filter}",
                "{task: change-filter}, {task: circulate-descaler}, {task: flush}, {task: sanitize}");
        List<Schedule.Alarm> acid = sheet("autumn-condensers-hotel", Language.ENGLISH).schedule().orElseThrow().alarms()
                .stream().filter(alarm -> alarm.latest().isPresent()).toList();

        assertThat(acid).isNotEmpty().allSatisfy(alarm -> assertThat(alarm.rings())
                .isBeforeOrEqualTo(alarm.latest().orElseThrow().minusMinutes(4)));
    }

    /** The helper of the hotel's visit is not qualified for acid, and comes alone. */
    @Test
    void sheet_acidForAHelperAlone_refused() throws Exception {
        change("planned/summer-cleaning-bakery.yaml", "grade: lead", "grade: helper");

        assertThat(problems()).hasSize(2).extracting(Problem::message)
                .allMatch(message -> message.contains("qualified for acid, but of those who come 0 are"));
    }

    /** With a sanitizer of chlorine, no flush and no pH reading may be left out. */
    @ParameterizedTest
    @ValueSource(strings = {"flushes: 3|flushes: 2", "record: [ph]|record: [ice-weight]"})
    void sheet_chlorineAfterAcid_refused(String edit) throws Exception {
        change("pricing/materials.yaml", "chemistry: other", "chemistry: chlorine");
        change("pricing/tasks.yaml", edit.substring(0, edit.indexOf('|')), edit.substring(edit.indexOf('|') + 1));

        assertThat(problems()).singleElement().matches(problem -> problem.message().contains("chlorine follows acid"));
    }

    @Test
    void sheet_nothingPlanned_saysSo() throws Exception {
        change("planned/summer-cleaning-bakery.yaml", "  - machine: proof-room", "  - machine: proof-room\n"
                + "    complaint: x\n  - machine: proof-room");
        assertThat(problems()).extracting(Problem::message)
                .containsExactly("no task is planned for the machine \"proof-room\"");

        Path none = folder.resolve("planned/none.yaml");
        Files.writeString(none, """
                format: 1
                site: crumb-lane-bakery
                people:
                  - {name: A, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T11:00, on: cleaning}
                """);
        assertThat(DemoShop.office(folder).worksheet(FormName.file(none), paperOptions()).problems())
                .extracting(Problem::text)
                .containsExactly(
                        "planned/none.yaml:2: site: no machine is planned for (machines, each with its tasks)");
    }

    @Test
    void dose_aboveItsLabel_cannotEvenBeWritten() {
        Optional<WorkSheet.ByLabel> label = Optional.of(new WorkSheet.ByLabel(Quantity.of(1, Unit.GALLON),
                Quantity.of(6, Unit.FLUID_OUNCE)));
        Quantity above = new Quantity(new BigDecimal("6.001"), Unit.FLUID_OUNCE);

        assertThatThrownBy(() -> new WorkSheet.Dose("descaler", Optional.empty(), above, label))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static String plain(WorkSheet.Dose dose) {
        WorkSheet.ByLabel label = dose.label().orElseThrow();
        return dose.quantity().number() + " in " + label.water().number() + ", at most " + label.most().number();
    }

    private void change(String file, String right, String wrong) throws Exception {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(right);
        int at = text.indexOf(right);
        Files.writeString(folder.resolve(file), text.substring(0, at) + wrong + text.substring(at + right.length()));
    }

    private List<Problem> problems() {
        return DemoShop.office(folder)
                .worksheet(FormName.file(folder.resolve("planned/summer-cleaning-bakery.yaml")), paperOptions())
                .problems();
    }

    private List<WorkSheet> sheets(Language language) {
        return DemoShop.files(folder, "planned").stream().map(file -> read(file, language).orElseThrow()).toList();
    }

    private WorkSheet sheet(String name, Language language) {
        return read(folder.resolve("planned/" + name + ".yaml"), language).orElseThrow();
    }

    private Validated<WorkSheet> read(Path file, Language language) {
        return new VisitLoader(DemoShop.read(folder)).of(FormName.file(file))
                .then(hand -> new WorkSheetAssembly(hand, language, Map.of()).sheets(DAY)
                        .map(sheets -> sheets.getFirst().sheet()));
    }

    private static PaperOptions paperOptions() {
        return new PaperOptions(Optional.empty(), DAY, Optional.empty(), Extras.NONE);
    }
}
