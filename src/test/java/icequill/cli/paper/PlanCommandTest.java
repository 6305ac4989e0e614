package icequill.cli.paper;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Timetables of the invented shop's planned visits, as a user asks for them. */
class PlanCommandTest {

    private static final String OPEN = "access: {from: \"09:00\", until: \"15:00\"}";

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
        Run run = Run.of("plan", planned("summer-cleaning-bakery"), "--json");
        JsonNode plan = run.json();

        assertThat(run.status()).isZero();
        assertThat(plan.propertyNames()).containsExactly("minutes", "proven", "bound", "remarks", "tasks");
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
        Run run = Run.of("plan", planned("summer-cleaning-bakery"));

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
        Run run = Run.of("plan", planned("summer-cleaning-bakery"), "--ics", file.toString());
        String calendar = Files.readString(file);

        assertThat(run.status()).isZero();
        assertThat(calendar.replace("\r\n ", "")).startsWith("BEGIN:VCALENDAR\r\n").contains("VERSION:2.0",
                "UID:summer-cleaning-bakery-alarm-2@icequill", "DTSTAMP:20260714T131500Z",
                "DTSTART:20260714T143400Z",
                "SUMMARY:proof-room: flush three times with clean water (Ada Quill) ≤ 10:36", "TRIGGER:-PT2M",
                "ACTION:DISPLAY");
        assertThat(calendar.split("BEGIN:VEVENT", -1)).hasSize(5);

        Run.of("plan", planned("summer-cleaning-bakery"), "--ics", file.toString());
        assertThat(Files.readString(file)).isEqualTo(calendar);

        Run.of("plan", planned("summer-cleaning-bakery"), "--ics", file.toString(), "--lang", "es");
        assertThat(Files.readString(file)).contains("SUMMARY:proof-room: enjuagar tres veces");
    }

    @Test
    void plan_moreTechnicians_takesNoLonger() {
        int two = Run.of("plan", planned("autumn-condensers-hotel"), "--json").json().path("minutes").asInt();
        Run one = Run.of("plan", planned("autumn-condensers-hotel"), "--crew", "1", "--json");

        assertThat(one.json().path("minutes").asInt()).isGreaterThan(two);
        assertThat(one.json().path("tasks").get(0).path("people").get(0).asString()).isEqualTo("technician 1");
    }

    @Test
    void plan_crewOfNobody_isAProblem() {
        Run run = Run.of("plan", planned("summer-cleaning-bakery"), "--crew", "0");

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
                            + "  circulation: [{machine: banquet, least: 10, most: 15}]\n");
            assertThat(Run.of("plan", planned("autumn-condensers-hotel")).status()).isZero();

            Files.writeString(site, plain + "layout:\n  ways: [{one: banquett, other: pool-bar, minutes: 9}]\n"
                    + "  neverBothOff: [{one: banquet, other: banquet}]\n"
                    + "  circulation: [{machine: banquet, least: 20, most: 15}]\n");
            assertThat(Run.of("plan", planned("autumn-condensers-hotel")).err())
                    .contains("there is no machine \"banquett\" (did you mean \"banquet\"?",
                            "\"banquet\" is named twice",
                            "at least 20 minutes, but at most 15", "3 problems");
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
            return Run.of("plan", planned("summer-cleaning-bakery"), "--json").json().path("remarks").valueStream()
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
                "The timetable runs from 9:15 AM to 11:21 AM, but the site lets us in from 8:30 AM to 11:20 AM.");
        assertThat(remarks(site, OPEN, "access: {from: \"09:15\", until: \"11:21\"}")).isEmpty();
        assertThat(remarks(labor, "until: \"17:00\"", "until: \"09:05\"")).containsExactly(
                "The visit takes 126 min, longer than a working day of 125 min: it needs more people or a second day.");
        assertThat(remarks(labor, "until: \"17:00\"", "until: \"09:06\"")).isEmpty();
    }

    /** The plan where the shop's tasks say something else. */
    private static Run planWith(String from, String to) throws IOException {
        Path tasks = shop.resolve("pricing/tasks.yaml");
        String plain = Files.readString(tasks);
        assertThat(plain).contains(from);
        try {
            Files.writeString(tasks, plain.replace(from, to));
            return Run.of("plan", planned("summer-cleaning-bakery"), "--json");
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
        Run run = Run.of("plan", visit.toString());
        Files.delete(visit);

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("planned/no-flush.yaml:16",
                "\"pour\" at \"proof-room\" is not flushed out afterwards");
    }
}
