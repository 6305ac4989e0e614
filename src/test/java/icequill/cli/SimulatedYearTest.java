package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * A year of an office by commands: visits done and missed, calls, credits, agreements that end. At the end of each quarter what was billed is what
 * the calendar gives by hand, nothing is billed or done twice, and what customers owe is what stands on their papers.
 */
class SimulatedYearTest {

    private static final long SEED = 20_260_601;
    private static final int FEW = 4;
    private static final int QUARTER = 3;
    private static final BigDecimal CENT = new BigDecimal("0.01");
    /** Of the demo's county, 4 + 4.5 + 0.375 %. */
    private static final BigDecimal WITH_TAX = new BigDecimal("1.08875");

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);
    private final Map<SimulatedSite, LocalDate> lastDays = new LinkedHashMap<>();
    /** Slots that were kept, by the ids of their visits. */
    private final Map<SimulatedSite, List<LocalDate>> kept = new LinkedHashMap<>();
    private final Set<String> calls = new HashSet<>();
    /** What each paper of the simulation came to, by number; what is given back is negative. */
    private final Map<String, BigDecimal> gross = new LinkedHashMap<>();
    private final Set<String> goodwill = new HashSet<>();

    @Test
    void yearOfAFewSites_isBilledAsItsCalendarsHaveIt() throws IOException {
        year(Database.SQLITE, FEW);
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"SQLITE, 300", "POSTGRESQL, 40"})
    void yearOfManySites_isBilledAsItsCalendarsHaveIt(Database database, int count) throws IOException {
        year(database, count);
    }

    private void year(Database database, int count) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        List<SimulatedSite> sites = IntStream.rangeClosed(1001, 1000 + count)
                .mapToObj(number -> SimulatedSite.of(number, random)).toList();
        Month first = new Month(shop, SimulatedSite.START);
        first.json("import", shop.write("simulated.yaml",
                String.join("---\n", sites.stream().map(SimulatedSite::forms).toList())).toString());
        for (int month = 0; month < SimulatedSite.TERM; month++) {
            Month now = new Month(shop, SimulatedSite.START.plusMonths(month));
            List<String> forms = new ArrayList<>();
            List<String> billed = new ArrayList<>();
            for (SimulatedSite site : sites) {
                visits(site, now, forms);
                calls(site, now, forms, billed);
            }
            if (!forms.isEmpty()) {
                now.json("import", shop.write("visits-" + month + ".yaml", String.join("---\n", forms)).toString());
            }
            ends(sites, now);
            bill(now, billed);
            if ((month + 1) % QUARTER == 0) {
                sites.forEach(site -> assertBilledAsEarned(site, now));
                assertListed(now);
            }
        }
        Month last = new Month(shop, SimulatedSite.START.plusMonths(SimulatedSite.TERM - 1));
        assertThat(last.json("audit").path("findings")).isEmpty();
        assertWindows(sites, last);
        sites.subList(0, FEW).forEach(site -> assertOwed(site, last));
    }

    /** Nine in ten are kept; what is missed stays missed. */
    private void visits(SimulatedSite site, Month now, List<String> forms) {
        site.slots().stream().filter(now::contains).filter(day -> isInForce(site, day))
                .filter(day -> random.nextInt(10) > 0).forEach(day -> {
                    kept.computeIfAbsent(site, none -> new ArrayList<>()).add(day);
                    forms.add(site.visit(site.id() + "-of-" + day, day, Optional.empty()));
                });
    }

    private void calls(SimulatedSite site, Month now, List<String> forms, List<String> billed) {
        LocalDate day = now.first().plusDays(7 + random.nextInt(14));
        if (random.nextInt(4) == 0 && isInForce(site, day)) {
            JsonNode taken = now.json("call", "take", site.id(), "--by", "Bram", "--symptom", "No ice.", "--at",
                    day.minusDays(1) + "T10:00");
            String call = taken.path("call").path("id").asString();
            String visit = site.id() + "-called-" + day;
            assertThat(calls.add(visit)).isTrue();
            forms.add(site.visit(visit, day, Optional.of(call)));
            billed.add(visit);
        }
    }

    /** One in forty a month, by thirty days of notice. */
    private void ends(List<SimulatedSite> sites, Month now) {
        for (SimulatedSite site : sites) {
            LocalDate received = now.first().plusDays(random.nextInt(20));
            LocalDate lastDay = received.plusDays(30);
            if (random.nextInt(40) == 0 && !lastDays.containsKey(site)
                    && lastDay.isBefore(SimulatedSite.START.plusMonths(SimulatedSite.TERM))) {
                JsonNode ended = now.json("agreement", "end", site.agreement(), "--way", "mail", "--on",
                        received.toString(), "--yes");
                assertThat(ended.path("lastDay").asString()).isEqualTo(lastDay.toString());
                lastDays.put(site, lastDay);
                ended.path("credits").forEach(this::noted);
            }
        }
    }

    private void bill(Month now, List<String> calls) {
        if (!calls.isEmpty()) {
            now.json(Stream.concat(Stream.concat(Stream.of("invoice", "issue"), calls.stream()),
                    Stream.of("--date", now.last().toString())).toArray(String[]::new)).path("papers")
                    .forEach(this::noted);
        }
        String[] due = {"invoice", "due", "--until", now.last().toString(), "--issue", "--date",
                now.last().toString()};
        now.json(due).path("papers").forEach(this::noted);
        assertThat(now.json(due).path("papers")).as("twice").isEmpty();
        gross.keySet().stream().filter(number -> number.startsWith("INV") && random.nextInt(30) == 0).toList()
                .forEach(number -> credited(now, number));
    }

    /** A tenth of an invoice as goodwill, where it has one left. */
    private void credited(Month now, String number) {
        Run credit = now.run("credit", "issue", number, "--percent", "10", "--reason", "We came late.", "--date",
                now.last().toString(), "--json");
        if (credit.status() == 0) {
            JsonNode paper = credit.json().path("papers").get(0);
            noted(paper);
            goodwill.add(paper.path("number").asString());
        }
    }

    private void noted(JsonNode paper) {
        assertThat(gross.put(paper.path("number").asString(), new BigDecimal(paper.path("gross").asString())))
                .as("a number twice").isNull();
    }

    private boolean isInForce(SimulatedSite site, LocalDate day) {
        return !lastDays.getOrDefault(site, LocalDate.MAX).isBefore(day);
    }

    private void assertBilledAsEarned(SimulatedSite site, Month now) {
        String what = site + " in " + now.first();
        JsonNode shown = now.json("agreement", "show", site.agreement());
        List<LocalDate> done = kept.getOrDefault(site, List.of());
        List<LocalDate> dates = site.months().isPresent() ? site.due() : site.slots();
        List<Integer> due = IntStream.range(0, dates.size())
                .filter(place -> !dates.get(place).isAfter(now.last()) && isInForce(site, dates.get(place))
                        && (site.months().isPresent() || done.contains(dates.get(place))))
                .boxed().toList();
        BigDecimal whole = due.stream().map(place -> site.payment(place + 1)).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<JsonNode> billed = StreamSupport.stream(shown.path("payments").spliterator(), false)
                .filter(payment -> payment.has("invoice")).toList();
        assertThat(billed).as(what).extracting(payment -> payment.path("due").asString())
                .isEqualTo(due.stream().map(dates::get).map(LocalDate::toString).toList());
        BigDecimal left = sum(billed, "net").subtract(sum(billed, "givenBack"));
        assertThat(left).as(what).isEqualByComparingTo(site.months().isPresent() && lastDays.containsKey(site)
                ? whole.min(site.earned(lastDays.get(site)))
                : whole);
        List<String> papers = StreamSupport.stream(shown.path("papers").spliterator(), false).map(JsonNode::asString)
                .filter(number -> !goodwill.contains(number)).toList();
        assertThat(papers.stream().map(number -> gross.getOrDefault(number, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add)).as(what).isCloseTo(left.multiply(WITH_TAX),
                        Offset.offset(CENT.multiply(BigDecimal.valueOf(papers.size()))));

        assertThat(StreamSupport.stream(shown.path("visits").spliterator(), false)
                .filter(visit -> visit.has("done")).map(visit -> visit.path("day").asString()).toList()).as(what)
                .isEqualTo(done.stream().map(LocalDate::toString).toList());
    }

    private static BigDecimal sum(List<JsonNode> payments, String key) {
        return payments.stream().map(payment -> new BigDecimal(payment.path(key).asString()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The book has what was told, and nothing else. */
    private void assertListed(Month now) {
        Map<String, BigDecimal> listed = new LinkedHashMap<>();
        Stream.of("invoice", "credit-note").forEach(kind -> now.json("find", "--kind", kind, "--most", "100000")
                .path("papers").forEach(paper -> listed.put(paper.path("number").asString(),
                        new BigDecimal(paper.path("gross").asString()))));
        assertThat(listed).containsExactlyInAnyOrderEntriesOf(gross);
    }

    /** What a customer owes is what his papers come to. */
    private void assertOwed(SimulatedSite site, Month now) {
        BigDecimal papers = now.json("find", site.name(), "--most", "1000").path("papers").findValuesAsString("gross")
                .stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add);
        JsonNode statement = now.json("customer", "statement",
                now.json("site", "card", site.id()).path("customer").asString(), "--date", now.last().toString());
        assertThat(new BigDecimal(statement.path("amounts").path("balance").asString())).as(site.name())
                .isEqualByComparingTo(papers);
    }

    /**
     * Terms end on 31 May 2027 with sixty days to refuse, so by 1 April; New York wants notice 15 to 30 days before that: 2 to 17 March.
     */
    private void assertWindows(List<SimulatedSite> sites, Month last) {
        List<String> told = new ArrayList<>();
        last.json("agreement", "renewals", "--until", "2027-06-30").path("renewals").forEach(renewal -> {
            if (renewal.path("agreement").asString().startsWith("S-")) {
                told.add(renewal.path("agreement").asString());
                JsonNode window = renewal.path("window");
                assertThat(window.path("first").asString() + " " + window.path("last").asString())
                        .isEqualTo("2027-03-02 2027-03-17");
            }
        });
        assertThat(told).containsExactlyInAnyOrderElementsOf(
                sites.stream().filter(site -> !lastDays.containsKey(site)).map(SimulatedSite::agreement).toList());
    }

    /** The office at the end of a month. */
    private record Month(BookShop shop, LocalDate first) {

        LocalDate last() {
            return first.plusMonths(1).minusDays(1);
        }

        boolean contains(LocalDate day) {
            return !day.isBefore(first) && !day.isAfter(last());
        }

        Run run(String... line) {
            return shop.runAt(Clock.fixed(last().atTime(LocalTime.of(17, 0)).toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
                    line);
        }

        JsonNode json(String... line) {
            Run run = run(Stream.concat(Stream.of(line), Stream.of("--json")).toArray(String[]::new));
            assertThat(run.status()).as(String.join(" ", line) + run.out() + run.err()).isIn(0, 3);
            assertThat(run.json().path("problems").findValuesAsString("message")).as(String.join(" ", line) + run.out())
                    .allMatch(message -> message.contains("is not recorded as done"));
            return run.json();
        }
    }
}
