package icequill.cli.visit;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Timetables of the invented shop's planned visits, as a user asks for them. */
@Tag("wide")
class VisitTimetableTest {

    private static final String OPEN = "access:\n  from: \"09:00\"\n  until: \"15:00\"";

    @TempDir
    static Path folder;

    private static Path shop;

    @BeforeAll
    static void demoShop() {
        shop = folder.resolve("shop");
        DemoShop.in(shop);
    }

    private static String planned(String name) {
        return shop.resolve("planned").resolve(name + ".yaml").toString();
    }

    private static JsonNode task(JsonNode plan, String name) {
        return plan.path("tasks").valueStream().filter(task -> task.path("task").asString().equals(name)).findFirst()
                .orElseThrow();
    }

    /** 5 + 15, 6, 10 + 12 + 8, 3 + 20, 9, 2 + 10 with the bin in the wait, 4, 5 + 15, 2: one after another. */
    @Test
    void plan_oneMachine_takesItsChain() {
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--json");
        JsonNode plan = run.json();

        assertThat(run.status()).isZero();
        assertThat(plan.propertyNames()).containsExactly("minutes", "proven", "bound", "walking", "overstays",
                "remarks", "tasks");
        assertThat(plan.path("remarks")).isEmpty();
        assertThat(plan.path("minutes").asInt()).isEqualTo(126);
        assertThat(plan.path("proven").asBoolean()).isTrue();
        assertThat(plan.path("bound").asInt()).isEqualTo(126);
        assertThat(plan.path("tasks").get(0).propertyNames()).containsExactly("machine", "task", "state", "people",
                "start", "end", "spare");
        assertThat(task(plan, "flush").path("start").asInt() - task(plan, "pour").path("end").asInt()).isBetween(20,
                22);
        assertThat(task(plan, "pour").path("people").get(0).asString()).isEqualTo("Ada Quill");
        assertThat(task(plan, "circulate").path("people")).isEmpty();
        assertThat(task(plan, "brush-condenser").path("state").asString()).isEqualTo("de-energized");
        assertThat(task(plan, "sanitize-wait").path("end").asInt())
                .isEqualTo(task(plan, "restart").path("start").asInt());
    }

    /** Three minutes a column: at work to 5, from 20 to 59, from 79 to 109 but for two minutes, and from 124. */
    @Test
    void plan_asText_drawsAChart() {
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"));

        assertThat(run.status()).isZero();
        assertThat(run.out().lines()).contains(
                "            0         30        60        90        120",
                "proof-room  AA....AAAAAAAAAAAAAA......AAAAAAAAAAA....A");
        assertThat(run.out()).contains("A = Ada Quill", "126 minutes, 0 of walking; proven: no timetable is shorter");
    }

    /** The visit begins at 9:15 in New York (13:15 UTC); the circulation ends 79 minutes later, as the flush begins. */
    @Test
    void plan_alarms_ringAtTheEndOfWaits() throws IOException {
        Path file = folder.resolve("alarms.ics");
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--ics", file.toString());
        String calendar = Files.readString(file);

        assertThat(run.status()).isZero();
        assertThat(calendar.replace("\r\n ", "")).startsWith("BEGIN:VCALENDAR\r\n").contains("VERSION:2.0",
                "UID:summer-cleaning-bakery-alarm-2@icequill", "DTSTAMP:20260714T131500Z",
                "DTSTART:20260714T143400Z",
                "SUMMARY:proof-room: flush three times with clean water (Ada Quill) ≤ 10:36", "TRIGGER:-PT2M",
                "ACTION:DISPLAY");
        assertThat(calendar.split("BEGIN:VEVENT", -1)).hasSize(5);

        Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--ics", file.toString());
        assertThat(Files.readString(file)).isEqualTo(calendar);

        Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--ics", file.toString(), "--lang", "es");
        assertThat(Files.readString(file)).contains("SUMMARY:proof-room: enjuagar tres veces");
    }

    /**
     * In New York clocks go forward at 2:00 on 8 March 2026, and back at 2:00 on 1 November: the flush is 79 real minutes after the beginning
     * all the same, and the latest time, 81 after it, is that of the clock on the wall.
     */
    @ParameterizedTest
    @CsvSource({"2026-03-08T01:30, 2026-03-08T06:00, 20260308T074900Z, 03:51",
            "2026-11-01T00:30, 2026-11-01T06:00, 20261101T054900Z, 01:51"})
    void plan_alarmsWhereClocksChange_ringAfterRealMinutes(String arrived, String left, String rings, String latest)
            throws IOException {
        Path file = folder.resolve("clocks.ics");
        Run run = planWhere("planned/summer-cleaning-bakery.yaml",
                "arrived: 2026-07-14T09:15\n    left: 2026-07-14T11:30", "arrived: " + arrived + "\n    left: " + left,
                "visit",
                "timetable",
                planned("summer-cleaning-bakery"), "--ics", file.toString());

        assertThat(run.status()).isZero();
        assertThat(Files.readString(file).replace("\r\n ", "")).contains("DTSTART:" + rings,
                "flush three times with clean water (Ada Quill) ≤ " + latest);
    }

    @Test
    void plan_moreTechnicians_takesNoLonger() {
        int two = Run.of("visit", "timetable", planned("autumn-condensers-hotel"), "--json").json().path("minutes")
                .asInt();
        Run one = Run.of("visit", "timetable", planned("autumn-condensers-hotel"), "--crew", "1", "--json");

        assertThat(one.json().path("minutes").asInt()).isGreaterThan(two);
        assertThat(one.json().path("tasks").get(0).path("people").get(0).asString()).isEqualTo("technician 1");
    }

    @Test
    void plan_crewOfNobody_isAProblem() {
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--crew", "0");

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("0 people come (from 1 to 6 for a timetable)");
    }

    @Test
    void plan_layoutOfTheSite_isHeeded() throws IOException {
        Path site = shop.resolve("sites/hotel-fernhill.yaml");
        String plain = Files.readString(site);
        try {
            Files.writeString(site,
                    plain + "layout:\n  walk: 4\n  ways: [{one: banquet, other: pool-bar, minutes: 9}]\n"
                            + "  neverBothOff: [{one: main-kitchen, other: banquet}]\n"
                            + "  neverAllOff: [{machines: [main-kitchen, banquet, pool-bar]}]\n"
                            + "  circulation: [{machine: banquet, least: 10, most: 15}]\n");
            assertThat(Run.of("visit", "timetable", planned("autumn-condensers-hotel")).status()).isZero();

            Files.writeString(site, plain + "layout:\n  ways: [{one: banquett, other: pool-bar, minutes: 9}]\n"
                    + "  neverBothOff: [{one: banquet, other: banquet}]\n"
                    + "  neverAllOff: [{machines: [banquet]}, {machines: [banquet, pool-baar]}]\n"
                    + "  circulation: [{machine: banquet, least: 20, most: 15}]\n");
            assertThat(Run.of("visit", "timetable", planned("autumn-condensers-hotel")).err())
                    .contains("there is no machine \"banquett\" (did you mean \"banquet\"?",
                            "\"banquet\" is named twice", "one machine alone is no set",
                            "there is no machine \"pool-baar\"",
                            "at least 20 minutes, but at most 15", "5 problems");
        } finally {
            Files.writeString(site, plain);
        }
    }

    /** What is said of the 126 minutes from 9:15 to 11:21 where a file says something else. */
    private static List<String> remarks(String file, String from, String to) throws IOException {
        Path changed = shop.resolve(file);
        String plain = Files.readString(changed);
        assertThat(plain).contains(from);
        try {
            Files.writeString(changed, plain.replace(from, to));
            return Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--json").json().path("remarks")
                    .valueStream()
                    .map(remark -> remark.asString().replaceAll("\\h", " ")).toList();
        } finally {
            Files.writeString(changed, plain);
        }
    }

    /** The working day has 600 minutes. */
    @Test
    void plan_longerThanThereIsTime_saysSo() throws IOException {
        String visit = "planned/summer-cleaning-bakery.yaml";
        String site = "sites/crumb-lane-bakery.yaml";
        String labor = "pricing/labor.yaml";

        assertThat(remarks(visit, "T11:30", "T11:20")).containsExactly(
                "Ada Quill is planned from 9:15 AM to 11:20 AM, but the timetable has work from 9:15 AM to 11:21 AM.");
        assertThat(remarks(visit, "T11:30", "T11:21")).isEmpty();
        assertThat(remarks(site, OPEN, "access: {from: \"08:30\", until: \"11:20\"}")).containsExactly(
                "The site lets us in until 11:20 AM, but the timetable runs until 11:21 AM, 1 min longer. Who stays: Ada Quill.");
        assertThat(remarks(site, OPEN, "access: {from: \"09:16\", until: \"15:00\"}")).containsExactly(
                "The timetable runs from 9:15 AM to 11:21 AM, but the site lets us in from 9:16 AM to 3:00 PM.");
        assertThat(remarks(site, OPEN, "access: {from: \"09:15\", until: \"11:21\"}")).isEmpty();
        assertThat(remarks(labor, "until: \"17:00\"", "until: \"09:05\"")).containsExactly(
                "The visit takes 126 min, longer than a working day of 125 min: it needs more people or a second day.");
        assertThat(remarks(labor, "until: \"17:00\"", "until: \"09:06\"")).isEmpty();
    }

    /**
     * At work from minute 0 to 59 (the wait of 15 after the readings is over by then), so a break of 10 that is due after 60 lies in the
     * circulation, from 9:15 + 59: nothing takes longer.
     */
    @Test
    void plan_breakOfTheShop_isSaid() throws IOException {
        assertThat(remarks("pricing/labor.yaml", "after: 300, minutes: 30", "after: 60, minutes: 10"))
                .containsExactly("Ada Quill has a break from 10:14 AM to 10:24 AM.");
        assertThat(remarks("pricing/labor.yaml", "after: 300, minutes: 30", "after: 60, minutes: 16"))
                .containsExactly("Ada Quill has a break from 10:14 AM to 10:30 AM.");
    }

    /** What the plan says where a file says something else. */
    private static Run planWhere(String file, String from, String to, String... arguments) throws IOException {
        Path changed = shop.resolve(file);
        String plain = Files.readString(changed);
        assertThat(plain).contains(from);
        try {
            Files.writeString(changed, plain.replace(from, to));
            return Run.of(arguments);
        } finally {
            Files.writeString(changed, plain);
        }
    }

    @Test
    void plan_technicianWhoMustLeaveTooSoon_isPlannedAndSaidToStay() throws IOException {
        String file = "planned/summer-cleaning-bakery.yaml";
        String[] plan = {"visit", "timetable", planned("summer-cleaning-bakery"), "--json"};
        String left = "left: 2026-07-14T11:30";

        assertThat(planWhere(file, left, left + "\n    mustLeave: 2026-07-14T11:21", plan).json().path("overstays"))
                .isEmpty();
        JsonNode late = planWhere(file, left, left + "\n    mustLeave: 2026-07-14T11:20", plan).json();
        assertThat(late.path("minutes").asInt()).isEqualTo(126);
        assertThat(late.path("overstays").get(0).path("person").asString()).isEqualTo("Ada Quill");
        assertThat(late.path("overstays").get(0).path("minutes").asInt()).isEqualTo(1);
        assertThat(late.path("remarks").get(0).asString().replaceAll("\\h", " ")).isEqualTo("Ada Quill must leave at "
                + "11:20 AM, but is needed until 11:21 AM, 1 min longer: no timetable was found that can do without.");
        assertThat(planWhere(file, left, left + "\n    mustLeave: 2026-07-14T09:15", plan).out())
                .contains("must leave 2026-07-14T09:15, but arrives 2026-07-14T09:15");
    }

    /** The bakery has a roof, and its machine is not known to be reached from the ground. */
    @Test
    void plan_workWhereSomebodyMayFall_isNotDoneAloneUnlessTheShopSaysSo() throws IOException {
        Path site = shop.resolve("sites/crumb-lane-bakery.yaml");
        String plain = Files.readString(site);
        Files.writeString(site, plain.replaceAll("(?m)^roof:.*\\n", "").replaceAll("(?m)^( +)groundLevel:.*\\n", "")
                + "roof: hatch above the oven\n");
        try {
            String labor = "pricing/labor.yaml";
            String[] two = {"visit", "timetable", planned("summer-cleaning-bakery"), "--crew", "2", "--json"};
            String[] one = {"visit", "timetable", planned("summer-cleaning-bakery")};

            assertThat(Run.of(one).status()).isZero();
            assertThat(planWhere(labor, "onRoof: alone", "onRoof: accompanied", one).err())
                    .contains("nobody may be alone on site for", "but only one comes", "a crew of at least 2");
            JsonNode accompanied = planWhere(labor, "onRoof: alone", "onRoof: accompanied", two).json();
            assertThat(accompanied.path("remarks").get(0).asString())
                    .startsWith("Where somebody may fall nobody works alone");
            assertThat(task(accompanied, "wash-parts").path("people")).hasSize(1);
            assertThat(task(planWhere(labor, "onRoof: alone", "onRoof: together", two).json(), "wash-parts")
                    .path("people")).hasSize(2);
        } finally {
            Files.writeString(site, plain);
        }
    }

    /**
     * Poured 10 minutes late, until 10:24: circulated until 10:44, and all else 10 later than the 11:21 of the plan. At 10:50 the limit of
     * 25 minutes from 10:21 is past.
     */
    @Test
    void plan_ticked_restIsPlannedAnewWithTheFlushInTime() {
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--done",
                "proof-room circulate-descaler=10:24", "--json");
        JsonNode plan = run.json();

        assertThat(plan.path("minutes").asInt()).isEqualTo(136);
        assertThat(task(plan, "pour").path("end").asInt()).isEqualTo(69);
        assertThat(task(plan, "wash-parts").path("end").asInt()).isLessThanOrEqualTo(66);
        assertThat(task(plan, "flush").path("start").asInt()).isEqualTo(89);
        assertThat(plan.path("remarks").get(0).asString().replaceAll("\\h", " "))
                .isEqualTo("Planned anew from 10:24 AM on: all is done at 11:31 AM.");

        assertThat(
                Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--done", "proof-room pour=10:24",
                        "--now", "10:50")
                        .out().replaceAll("\\h", " "))
                .contains(": the cleaner should have been flushed out by 10:46 AM. Flush at 10:50 AM, before all else");
    }

    /**
     * Poured until 10:24, to be flushed from 10:44 to 10:46, and the lead must leave at 10:40: the alarm rings all the same, and he stays until
     * all is done at 11:31.
     */
    @Test
    void plan_tickedWhereNobodyMayStayForTheFlush_stillRingsForIt() throws IOException {
        Path file = folder.resolve("stay.ics");
        String left = "left: 2026-07-14T11:30";
        Run run = planWhere("planned/summer-cleaning-bakery.yaml", left, left + "\n    mustLeave: 2026-07-14T10:40",
                "visit",
                "timetable", planned("summer-cleaning-bakery"), "--done", "proof-room pour=10:24", "--json", "--ics",
                file.toString());

        assertThat(task(run.json(), "flush").path("start").asInt()).isEqualTo(89);
        assertThat(run.json().path("remarks").get(1).asString().replaceAll("\\h", " "))
                .startsWith("Ada Quill must leave at 10:40 AM, but is needed until 11:31 AM, 51 min longer");
        assertThat(Files.readString(file).replace("\r\n ", "")).contains("DTSTART:20260714T144400Z",
                "flush three times with clean water (Ada Quill) ≤ 10:46");
    }

    @Test
    void plan_siteWantsItDoneEarlier_saysByHowMuch() throws IOException {
        String file = "planned/summer-cleaning-bakery.yaml";
        String begins = "site: crumb-lane-bakery\n";

        assertThat(remarks(file, begins, begins + "doneBy: 2026-07-14T11:21\n")).isEmpty();
        assertThat(remarks(file, begins, begins + "doneBy: 2026-07-14T11:00\n"))
                .containsExactly("The site wants all to be done by 11:00 AM; it will be 11:21 AM, 21 min later.");
        String[] plan = {"visit", "timetable", planned("summer-cleaning-bakery")};
        for (String wrong : List.of("2026-07-14T09:15", "2026-07-15T09:16")) {
            assertThat(planWhere(file, begins, begins + "doneBy: " + wrong + "\n", plan).err()).contains(
                    "to be done by " + wrong + ", but begins 2026-07-14T09:15 (a time after the beginning, within 24 "
                            + "hours of it)");
        }
    }

    @Test
    void plan_tickedWrongly_saysAllThatIsWrong() {
        Run run = Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--done", "proof-room flush",
                "--done", "proof-rom flush=10:42", "--done", "proof-room flsh=10:42", "--done",
                "proof-room wash-parts=25:00", "--done", "proof-room sanitize=10:10", "--done", "proof-room pour=10:24",
                "--done", "proof-room pour=10:25", "--now", "08:00");

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("\"proof-room flush\" is no task with its time",
                "there is no machine \"proof-rom\" (did you mean \"proof-room\"?",
                "there is no task \"flsh\"", "\"25:00\" is no time of day",
                "\"sanitize\" at \"proof-room\" is ticked as over before \"pour\", which comes before it",
                "\"proof-room pour=10:25\" is ticked a second time",
                "08:00 is before the visit, which begins at 09:15");
    }

    /** Once more in the same bakery, by the same lead, planned for a later time. */
    private static Run planOfADay(String arrived, String drive, String... more) throws IOException {
        Path second = shop.resolve("planned/again-bakery.yaml");
        Files.writeString(second, Files.readString(Path.of(planned("summer-cleaning-bakery")))
                .replace("arrived: 2026-07-14T09:15\n    left: 2026-07-14T11:30",
                        "arrived: " + arrived + "\n    left: 2026-07-14T15:00"));
        try {
            List<String> arguments = new ArrayList<>(
                    List.of("visit", "timetable", planned("summer-cleaning-bakery"), "--then",
                            second.toString(), "--drive", drive));
            arguments.addAll(List.of(more));
            return Run.of(arguments.toArray(String[]::new));
        } finally {
            Files.delete(second);
        }
    }

    private static List<String> secondRemarks(Run run) {
        return run.json().path("next").path("remarks").valueStream()
                .map(remark -> remark.asString().replaceAll("\\h", " ")).toList();
    }

    /** 9:15 and 126 minutes are 11:21; 25 of driving, 11:46; 126 + 25 + 126 minutes are 277. */
    @Test
    void plan_twoVisitsOfADay_oneAfterTheOtherWithTheDrive() throws IOException {
        Path file = folder.resolve("day.ics");
        Run run = planOfADay("2026-07-14T11:30", "25", "--json", "--ics", file.toString());

        assertThat(run.json().path("next").path("minutes").asInt()).isEqualTo(126);
        assertThat(secondRemarks(run)).startsWith(
                "All is done at the first site at 11:21 AM; with a drive of 25 min we are here at 11:46 AM.",
                "That is later than planned, which was 11:30 AM.").noneMatch(remark -> remark.contains("break"));
        assertThat(Files.readString(file).replace("\r\n ", "")).contains("UID:summer-cleaning-bakery-alarm-2@icequill",
                "DTSTART:20260714T143400Z", "UID:again-bakery-alarm-2@icequill", "DTSTART:20260714T170500Z");
        assertThat(planOfADay("2026-07-14T11:30", "25").out()).contains("again-bakery, 11:46");
        assertThat(secondRemarks(planOfADay("2026-07-14T12:00", "25", "--json"))).hasSize(1);
    }

    /** A break of 30 that is due after 240 comes before the drive, unless half an hour is left over anyhow. */
    @Test
    void plan_twoVisitsTooLongWithoutABreak_haveItBetween() throws IOException {
        Path labor = shop.resolve("pricing/labor.yaml");
        String plain = Files.readString(labor);
        Files.writeString(labor, plain.replace("after: 300", "after: 240"));
        try {
            assertThat(secondRemarks(planOfADay("2026-07-14T11:30", "25", "--json"))).startsWith(
                    "All is done at the first site at 11:21 AM; with a drive of 25 min we are here at 12:16 PM.",
                    "Before the drive everybody has a break of 30 min.",
                    "That is later than planned, which was 11:30 AM.");
            assertThat(secondRemarks(planOfADay("2026-07-14T12:15", "25", "--json"))).hasSize(3);
            assertThat(secondRemarks(planOfADay("2026-07-14T12:16", "25", "--json"))).hasSize(1);
        } finally {
            Files.writeString(labor, plain);
        }
    }

    /**
     * One person at the hotel: banquet 10 + 5 + 15 + 2, main kitchen 5 + 15 + 10 + 5 + 15 + 2, pool bar 6 + 8 + 8 + 4; no two of them fit into 54
     * minutes. From Friday on the days are Friday, Monday and Tuesday; the kitchen's first alarm rings 20 after 8:15 in New York.
     */
    @Test
    void plan_longerThanAWorkingDay_isSplitIntoDaysFromTheSameHour() throws IOException {
        Path file = folder.resolve("days.ics");
        String visit = "planned/autumn-condensers-hotel.yaml";
        Path labor = shop.resolve("pricing/labor.yaml");
        Path form = shop.resolve(visit);
        String plain = Files.readString(labor);
        String planned = Files.readString(form);
        Files.writeString(labor, plain.replace("until: \"17:00\"", "until: \"07:54\""));
        Files.writeString(form, planned.replace("2026-09-22", "2026-09-25"));
        try {
            JsonNode first = Run.of("visit", "timetable", planned("autumn-condensers-hotel"), "--crew", "1", "--json",
                    "--ics", file.toString()).json();
            JsonNode second = first.path("next");

            assertThat(List.of(first.path("minutes").asInt(), second.path("minutes").asInt(),
                    second.path("next").path("minutes").asInt())).containsExactly(32, 52, 26);
            assertThat(second.path("remarks").get(0).asString().replaceAll("\\h", " "))
                    .isEqualTo("Day 2 of 3, since all "
                            + "at once would be longer than a working day of 54 min. Today: main kitchen.");
            assertThat(Files.readString(file).replace("\r\n ", "")).contains(
                    "UID:autumn-condensers-hotel-day-2-alarm-1@icequill", "DTSTART:20260928T123500Z");

            Files.writeString(labor, plain.replace("until: \"17:00\"", "until: \"07:52\""));
            Files.writeString(form, planned.replaceAll("(?m)^  - .*Teo Lindqvist.*\\n(    .*\\n)*", ""));
            Run sheets = Run.of("visit", "worksheet", form.toString(), "--date", "2026-09-21", "--lang", "es",
                    "--html");
            assertThat(sheets.err()).isEmpty();
            assertThat(sheets.out()).contains("worksheet-autumn-condensers-hotel.pdf",
                    "worksheet-autumn-condensers-hotel-day-2.pdf",
                    "worksheet-autumn-condensers-hotel-day-3.pdf");
            assertThat(text("worksheet-autumn-condensers-hotel-day-2.html"))
                    .contains("Día 2 de 3, pues todo seguido sería más que una jornada de 52 min", "23 de septiembre");
        } finally {
            Files.writeString(labor, plain);
            Files.writeString(form, planned);
        }
    }

    private static String text(String paper) throws IOException {
        return Files.readString(shop.resolve("papers").resolve(paper)).replaceAll("[\\h\\s]+", " ");
    }

    /** At 11:21 all is done at the first; 25 minutes later, at 11:46, the second begins, and is done at 1:52. */
    @Test
    void worksheets_ofTwoVisitsOfADay_haveEachTheirOwnClock() throws IOException {
        Path second = shop.resolve("planned/noon-bakery.yaml");
        Files.writeString(second, Files.readString(Path.of(planned("summer-cleaning-bakery")))
                .replace("arrived: 2026-07-14T09:15, left: 2026-07-14T11:30",
                        "arrived: 2026-07-14T11:30, left: 2026-07-14T15:00"));
        try {
            Run run = Run.of("visit", "worksheet", planned("summer-cleaning-bakery"), "--then", second.toString(),
                    "--drive", "25", "--date", "2026-07-10", "--html");

            assertThat(run.out()).contains("worksheet-summer-cleaning-bakery.pdf",
                    "worksheet-noon-bakery.pdf");
            assertThat(text("worksheet-summer-cleaning-bakery.html")).contains("done at 11:21 AM");
            assertThat(text("worksheet-noon-bakery.html")).contains("done at 1:52 PM",
                    "All is done at the first site at 11:21 AM; with a drive of 25 min we are here at 11:46 AM.");
        } finally {
            Files.delete(second);
        }
    }

    @Test
    void plan_secondVisitOnAnotherDayOrTooFar_isAProblem() throws IOException {
        assertThat(planOfADay("2026-07-14T11:30", "601").err()).contains("a drive of 601 minutes (from 0 to 600)");
        assertThat(Run
                .of("visit", "timetable", planned("summer-cleaning-bakery"), "--then",
                        planned("autumn-condensers-hotel"))
                .err()).contains("the first on 2026-07-14 (two visits of one day)");
    }

    /** The plan where the shop's tasks say something else. */
    private static Run planWith(String from, String to) throws IOException {
        Path tasks = shop.resolve("pricing/tasks.yaml");
        String plain = Files.readString(tasks);
        assertThat(plain).contains(from);
        try {
            Files.writeString(tasks, plain.replace(from, to));
            return Run.of("visit", "timetable", planned("summer-cleaning-bakery"), "--json");
        } finally {
            Files.writeString(tasks, plain);
        }
    }

    /** The pump runs while it is flushed, whatever the file says; so the 20 minutes of circulation pass before. */
    @Test
    void plan_flushInAnyState_waitsForTheCirculation() throws IOException {
        JsonNode plan = planWith("state: circulating\n    order: 70", "state: any\n    order: 70").json();

        assertThat(plan.path("minutes").asInt()).isEqualTo(126);
        assertThat(task(plan, "flush").path("start").asInt() - task(plan, "pour").path("end").asInt()).isBetween(20,
                22);
        assertThat(task(plan, "flush").path("state").asString()).isEqualTo("circulating");
    }

    @Test
    void plan_chemicalThatNobodyAttends_isAProblem() throws IOException {
        for (int order : List.of(60, 70, 80)) {
            Run run = planWith("order: " + order + "\n    attended: ",
                    "order: " + order + "\n    attended: 0 # ");

            assertThat(run.status()).isEqualTo(3);
            assertThat(run.out()).contains("pricing/tasks.yaml",
                    "nobody would be at the machine while a chemical goes in or is flushed out");
        }
    }

    @Test
    void plan_visitThatIsNotFlushed_saysWhy() throws IOException {
        Path visit = shop.resolve("planned/no-flush.yaml");
        Files.writeString(visit,
                Files.readString(Path.of(planned("summer-cleaning-bakery"))).replace("      - {task: flush}\n", ""));
        Run run = Run.of("visit", "timetable", visit.toString());
        Files.delete(visit);

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("planned/no-flush.yaml:20",
                "\"pour\" at \"proof-room\" is not flushed out afterwards");
    }
}
