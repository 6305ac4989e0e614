package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * A year of an office by commands, and the first month after it: visits done and missed, calls, machines in and out, credits, agreements that
 * are ended, renewed, refused, or end by themselves. Each month what is billed is what {@link SimulatedAgreement} has by hand, and nothing is
 * billed twice; each quarter agreements stand as they do there, and the book has the papers that were told and no other.
 */
@Tag("wide")
class SimulatedYearTest {

    private static final long SEED = 20_260_601;
    private static final int FEW = 4;
    private static final int QUARTER = 3;
    private static final int MONTHS = SimulatedAgreement.TERM + 1;
    private static final BigDecimal CENT = new BigDecimal("0.01");
    private static final LocalDate NOTICES = LocalDate.of(2027, 3, 1);
    /** Of a term that ends on 31 May and may be refused until sixty days before, 1 April: New York wants 15 to 30 days before that. */
    private static final LocalDate EARLIEST = LocalDate.of(2027, 3, 2);
    private static final LocalDate LATEST = LocalDate.of(2027, 3, 17);

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);
    private final SimulatedPapers papers = new SimulatedPapers();
    private final Map<SimulatedSite, SimulatedAgreement> agreements = new LinkedHashMap<>();
    /** Those that went on as another. */
    private final Map<SimulatedSite, SimulatedAgreement> before = new HashMap<>();
    private final Set<SimulatedSite> served = new HashSet<>();
    /** The last change of each. */
    private final Map<SimulatedSite, LocalDate> changed = new HashMap<>();

    @Test
    void yearOfAFewSites_isBilledAsItsCalendarsHaveIt() throws IOException {
        year(Database.SQLITE, FEW);
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"POSTGRESQL, 40", "SQLITE, 300"})
    void yearOfManySites_isBilledAsItsCalendarsHaveIt(Database database, int count) throws IOException {
        year(database, count);
    }

    private void year(Database database, int count) throws IOException {
        BookShop shop = shop(database);
        IntStream.rangeClosed(1001, 1000 + count).mapToObj(number -> SimulatedSite.of(number, random))
                .forEach(site -> agreements.put(site, new SimulatedAgreement(site, site.agreement(),
                        SimulatedSite.START, site.cents(), false)));
        new SimulatedMonth(shop, SimulatedSite.START).json("import", shop.write("simulated.yaml",
                String.join("---\n", agreements.keySet().stream().map(SimulatedSite::forms).toList())).toString());
        for (int month = 0; month < MONTHS; month++) {
            month(new SimulatedMonth(shop, SimulatedSite.START.plusMonths(month)));
        }
        SimulatedMonth last = new SimulatedMonth(shop, SimulatedSite.START.plusMonths(MONTHS - 1));
        assertThat(last.json("audit").path("findings")).isEmpty();
        agreements.keySet().forEach(site -> assertOwed(site, last));
    }

    /** With flat prices, so that what a machine adds can be worked out by hand. */
    private BookShop shop(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path tiers = shop.folder().resolve("pricing/tiers.yaml");
        Files.writeString(tiers, Files.readString(tiers).replaceFirst("(?m)^exclusions:", """
                flat:
                  further: 0
                  machines:
                    - {scope: full-clean, make: batch, upTo: 1200, price: 122.75}

                exclusions:"""));
        shop.json("rates", "adopt", "--yes");
        return shop;
    }

    private void month(SimulatedMonth now) throws IOException {
        List<String> forms = new ArrayList<>();
        Map<String, BigDecimal> calls = new LinkedHashMap<>();
        agreements.forEach((site, agreement) -> {
            visits(site, agreement, now, forms);
            call(site, now, forms, calls);
        });
        if (!forms.isEmpty()) {
            now.json("import", now.shop().write("visits-" + now.first() + ".yaml", String.join("---\n", forms))
                    .toString());
        }
        if (now.first().equals(NOTICES.minusMonths(1))) {
            assertWindows(now, "wait", agreements.values().stream().filter(SimulatedAgreement::isRunning).toList());
        }
        agreements.forEach((site, agreement) -> lives(site, agreement, now));
        if (now.first().equals(NOTICES.plusMonths(1))) {
            assertWindows(now, "too-late", agreements.values().stream().filter(SimulatedAgreement::isRunning)
                    .filter(agreement -> agreement.isInForce(now.last())).toList());
        }
        bill(now, calls);
        agreements.forEach((site, agreement) -> changes(site, agreement, now));
        credits(now);
        if ((now.first().getMonthValue() - SimulatedSite.START.getMonthValue() + 1) % QUARTER == 0
                || now.first().equals(SimulatedSite.START.plusMonths(MONTHS - 1))) {
            agreements.forEach((site, agreement) -> assertStands(site, agreement, now));
            before.forEach((site, agreement) -> assertStands(site, agreement, now));
            assertListed(now);
        }
    }

    /** Nine in ten are kept; what is missed stays missed. */
    private void visits(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now, List<String> forms) {
        agreement.slots().stream().filter(now::contains).filter(agreement::isInForce)
                .filter(day -> random.nextInt(10) > 0).forEach(day -> {
                    agreement.kept(day);
                    forms.add(site.visit(site.id() + "-of-" + day, day, Optional.empty()));
                });
    }

    /** In one of four months somebody calls, whether an agreement is in force or not. */
    private void call(SimulatedSite site, SimulatedMonth now, List<String> forms, Map<String, BigDecimal> billed) {
        LocalDate day = now.first().plusDays(7 + random.nextInt(14));
        if (random.nextInt(4) == 0) {
            JsonNode taken = now.json("call", "take", site.id(), "--by", "Bram", "--symptom", "No ice.", "--at",
                    day.minusDays(1) + "T10:00").path("call");
            assertThat(taken.path("agreement").asString("")).as(site + " on " + day)
                    .isEqualTo(inForce(site, day.minusDays(1)).map(SimulatedAgreement::number).orElse(""));
            String visit = site.id() + "-called-" + day;
            forms.add(site.visit(visit, day, Optional.of(taken.path("id").asString())));
            billed.put(visit, charge(day, inForce(site, day).isPresent()));
        }
    }

    private Optional<SimulatedAgreement> inForce(SimulatedSite site, LocalDate day) {
        return Stream.concat(Stream.ofNullable(before.get(site)), Stream.ofNullable(agreements.get(site)))
                .filter(agreement -> agreement.isInForce(day)).findFirst();
    }

    /** By hand: the way and 90 minutes of labor, by the band of the day; 10 % of the labor less while an agreement is in force. */
    private static BigDecimal charge(LocalDate day, boolean isInForce) {
        int half = day.getDayOfWeek() == DayOfWeek.SUNDAY ? 4 : day.getDayOfWeek() == DayOfWeek.SATURDAY ? 3 : 2;
        long labor = 147_00L * half / 2;
        return SimulatedAgreement.taxed(52_00L * half / 2 + (isInForce ? labor - labor / 10 : labor));
    }

    /** One in forty a month is ended, by thirty days of notice; in spring the rest is renewed, or refused, or ends by itself. */
    private void lives(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now) {
        LocalDate received = now.first().plusDays(random.nextInt(20));
        LocalDate lastDay = received.plusDays(30);
        boolean isEnding = random.nextInt(40) == 0;
        if (isEnding && agreement.isRunning() && agreement.isInForce(received) && lastDay.isBefore(agreement.end())) {
            JsonNode ended = now.json("agreement", "end", agreement.number(), "--way", "mail", "--on",
                    received.toString(), "--yes");
            assertThat(ended.path("lastDay").asString()).isEqualTo(lastDay.toString());
            assertThat(ended.path("back").path("amount").asString("")).as(site + " on " + lastDay)
                    .isEqualTo(agreement.end(lastDay).map(SimulatedAgreement::money).map(BigDecimal::toString)
                            .orElse(""));
            ended.path("credits").forEach(papers::note);
        } else if (agreement.isRunning() && now.first().equals(NOTICES)) {
            notice(site, agreement, now);
        } else if (now.first().equals(NOTICES.plusMonths(1))) {
            renewed(site, agreement, now);
        }
    }

    private void notice(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now) {
        LocalDate sent = EARLIEST.plusDays(random.nextInt(12));
        switch (random.nextInt(6)) {
        case 0, 1 -> {
            told(agreement, now, "--way", "certified-mail", "--sent", sent.toString(), "--tracking", "9407 1");
            told(agreement, now, "--received", sent.plusDays(random.nextInt(4)).toString());
            served.add(site);
        }
        case 2 -> told(agreement, now, "--way", "mail", "--sent", sent.toString());
        case 3 -> {
            told(agreement, now, "--way", "certified-mail", "--sent", EARLIEST.minusDays(1).toString());
            told(agreement, now, "--received", sent.toString());
        }
        case 4 -> told(agreement, now, "--way", "certified-mail", "--sent", LATEST.plusDays(1).toString());
        default -> {
            now.json("agreement", "refuse", agreement.number(), "--way", "mail", "--on", sent.toString());
            agreement.over();
        }
        }
    }

    private static void told(SimulatedAgreement agreement, SimulatedMonth now, String... said) {
        now.json(Stream.concat(Stream.of("agreement", "notice", agreement.number()), Stream.of(said))
                .toArray(String[]::new));
    }

    /** Nothing goes on by itself but what a law's notice was served for; of the rest half is agreed to. */
    private void renewed(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now) {
        if (!agreement.isRunning()) {
            now.refused("", "agreement", "renew", agreement.number());
            return;
        }
        List<String> line = new ArrayList<>(List.of("agreement", "renew", agreement.number()));
        if (!served.contains(site)) {
            now.refused("no notice counts by ny-5-903", line.toArray(String[]::new));
            if (random.nextBoolean()) {
                return;
            }
            line.addAll(List.of("--agreed-by", "Bram"));
        }
        JsonNode next = now.json(line.toArray(String[]::new));
        agreement.over();
        before.put(site, agreement);
        agreements.put(site, new SimulatedAgreement(site, next.path("agreement").asString(),
                agreement.end().plusDays(1), agreement.renewed(), agreement.hasSpare()));
        assertThat(next.path("yearPrice").asString()).as(site.toString())
                .isEqualTo(SimulatedAgreement.money(agreement.renewed()).toString());
    }

    /** One in fifteen a month takes the spare machine in, or out: from a day of this month or the next one on. */
    private void changes(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now) {
        LocalDate from = now.first().plusDays(1 + random.nextInt(26) + 31L * random.nextInt(2));
        boolean isChanging = random.nextInt(15) == 0;
        if (!isChanging || !agreement.isRunning() || !agreement.isInForce(from) || from.getDayOfMonth() == 1
                || !from.isAfter(changed.getOrDefault(site, LocalDate.MIN))) {
            return;
        }
        String[] line = {"agreement", "change", agreement.number(), "--first-day", from.toString(),
                agreement.hasSpare() ? "--remove" : "--add", site.spare(), "--yes"};
        if (agreement.wouldGiveBackUnbilled(from)) {
            now.refused("would go back, and it is not billed yet", line);
            return;
        }
        JsonNode told = now.json(line);
        assertThat(told.path("price").get(0).path("amount").asString()).as(site + " from " + from)
                .isEqualTo(SimulatedAgreement.money(agreement.proration(from)).toString());
        agreement.change(from);
        changed.put(site, from);
        told.path("credits").forEach(papers::note);
        assertThat(told.path("yearAfter").asString()).as(site + " from " + from)
                .isEqualTo(SimulatedAgreement.money(agreement.yearPrice()).toString());
    }

    /** Calls, then whatever agreements ask for: each as it is by hand, and none of it twice. */
    private void bill(SimulatedMonth now, Map<String, BigDecimal> calls) {
        if (!calls.isEmpty()) {
            JsonNode issued = now.json(Stream.concat(
                    Stream.concat(Stream.of("invoice", "issue"), calls.keySet().stream()),
                    Stream.of("--date", now.last().toString())).toArray(String[]::new)).path("papers");
            issued.forEach(papers::note);
            assertThat(issued).extracting(paper -> paper.path("gross").asString()).as("calls of " + now.first())
                    .containsExactlyElementsOf(calls.values().stream().map(BigDecimal::toString).toList());
        }
        String[] line = {"invoice", "due", "--until", now.last().toString(), "--issue", "--date",
                now.last().toString()};
        JsonNode issued = now.json(line).path("papers");
        issued.forEach(papers::note);
        Stream.concat(agreements.entrySet().stream(), before.entrySet().stream())
                .forEach(one -> billed(one.getKey(), one.getValue(), now, issued));
        assertThat(now.json(line).path("papers")).as("twice").isEmpty();
    }

    private void billed(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now, JsonNode issued) {
        List<JsonNode> own = issued.valueStream()
                .filter(paper -> papers.isFor(site, SimulatedPapers.number(paper))).toList();
        List<SimulatedAgreement.Payment> due = agreement.due(now.last());
        if (before.containsKey(site) && due.isEmpty()) {
            return;
        }
        assertThat(own).as(site + " in " + now.first()).extracting(paper -> paper.path("gross").asString())
                .containsExactlyElementsOf(due.stream()
                        .map(payment -> SimulatedAgreement.taxed(payment.left()).toString()).toList());
        IntStream.range(0, due.size()).forEach(i -> due.get(i).bill(SimulatedPapers.number(own.get(i))));
    }

    /** Of one in thirty invoices a tenth is given back as goodwill. */
    private void credits(SimulatedMonth now) {
        papers.invoices().stream().filter(number -> random.nextInt(30) == 0).forEach(number -> {
            var credit = now.run("credit", "issue", number, "--percent", "10", "--reason", "We came late.", "--date",
                    now.last().toString());
            if (credit.status() == 0) {
                papers.noteGoodwill(credit.json().path("papers").get(0));
            } else {
                assertThat(papers.isWhole(number)).as(credit.out()).isFalse();
            }
        });
    }

    private void assertStands(SimulatedSite site, SimulatedAgreement agreement, SimulatedMonth now) {
        String what = site + " in " + now.first();
        JsonNode shown = now.json("agreement", "show", agreement.number());
        assertThat(
                shown.path("payments").valueStream()
                        .filter(payment -> !payment.path("net").equals(payment.path("givenBack")))
                        .map(payment -> payment.path("number").asInt() + " " + payment.path("due").asString() + " "
                                + payment.path("net").asString() + " " + payment.path("givenBack").asString() + " "
                                + payment.has("invoice")))
                .as(what)
                .containsExactlyElementsOf(agreement.payments().stream()
                        .filter(payment -> payment.left() > 0).map(SimulatedAgreement.Payment::told).toList());
        List<String> numbers = shown.path("papers").valueStream().map(JsonNode::asString).toList();
        assertThat(papers.due(numbers)).as(what).isCloseTo(SimulatedAgreement.taxed(agreement.billed()),
                Offset.offset(CENT.multiply(BigDecimal.valueOf(numbers.size() + 1L))));
        assertThat(shown.path("visits").valueStream().filter(visit -> visit.has("done"))
                .map(visit -> visit.path("day").asString())).as(what)
                .containsExactlyElementsOf(agreement.kept().stream().map(LocalDate::toString).toList());
    }

    /** The book has what was told, and nothing else. */
    private void assertListed(SimulatedMonth now) {
        Map<String, BigDecimal> listed = new HashMap<>();
        Stream.of("invoice", "credit-note").forEach(kind -> now.json("find", "--kind", kind, "--most", "100000")
                .path("papers").forEach(paper -> listed.put(SimulatedPapers.number(paper),
                        new BigDecimal(paper.path("gross").asString()))));
        assertThat(listed).containsExactlyInAnyOrderEntriesOf(papers.all());
    }

    /** What a customer owes is what his papers come to. */
    private void assertOwed(SimulatedSite site, SimulatedMonth now) {
        JsonNode statement = now.json("customer", "statement",
                now.json("site", "card", site.id()).path("customer").asString(), "--date", now.last().toString());
        assertThat(new BigDecimal(statement.path("amounts").path("balance").asString())).as(site.name())
                .isEqualByComparingTo(papers.of(site));
    }

    private static void assertWindows(SimulatedMonth now, String next, List<SimulatedAgreement> running) {
        List<String> told = new ArrayList<>();
        now.json("agreement", "renewals", "--until", "2027-06-30").path("renewals").forEach(renewal -> {
            if (renewal.path("agreement").asString().startsWith("S-")) {
                told.add(renewal.path("agreement").asString());
                JsonNode window = renewal.path("window");
                assertThat(window.path("first").asString() + " " + window.path("last").asString())
                        .isEqualTo(EARLIEST + " " + LATEST);
                assertThat(renewal.path("next").asString()).isEqualTo(next);
            }
        });
        assertThat(told).containsExactlyInAnyOrderElementsOf(
                running.stream().map(SimulatedAgreement::number).toList());
    }
}
