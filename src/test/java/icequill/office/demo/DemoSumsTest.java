package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.office.demo.PrintedRows.Row;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the papers of the demo print adds up as it is printed: read from their PDFs, in both languages, and added again. */
@Tag("wide")
class DemoSumsTest {

    private static final String HEAD = "(Line |Línea )?(What, and how it was figured|Qué, y cómo se calculó)( .*)?";
    private static final String TOTAL = "(Total|Importe) .*\\(USD\\) [0-9.,]+";
    private static final String LINES = "(Sum of the lines|Suma de las líneas) .*";
    private static final String LESS = "(Less|Menos) .*";
    private static final String NET = "(Total before tax|Total antes de impuestos) .*";
    private static final String PART = "(.+ tax, .*%|Impuesto: .*%) .*";
    private static final String TAX = "(Tax|Impuestos?) [0-9.,]+";
    private static final Pattern TIMES = Pattern.compile("(\\d+) × (\\d[\\d,]*\\.\\d\\d)");
    private static final Pattern PERCENT = Pattern.compile("(\\d+) ?%");

    private static List<Path> papers = List.of();

    @BeforeAll
    static void findAll() throws IOException {
        papers = FinishedDemo.papers();
    }

    @Test
    void pricedPapers_linesTaxesAndTotals() throws IOException {
        List<Path> priced = named("INV-.*|CN-.*|RQ-.*");
        assertThat(priced).hasSizeGreaterThan(20);
        for (Path paper : priced) {
            PrintedRows all = PrintedRows.of(paper);
            PrintedRows table = all.between(HEAD, TOTAL).large();
            float margin = table.margin();
            BigDecimal total = charged(table.rows().getLast(), margin);
            BigDecimal net = only(table, NET);
            List<BigDecimal> parts = amounts(table.matching(PART));
            BigDecimal lines = BigDecimal.ZERO;
            for (Row row : table.rows()) {
                if (row.text().matches(LINES + "|" + NET)) {
                    break;
                }
                lines = lines.add(row.charged(margin).orElse(BigDecimal.ZERO));
            }

            assertThat(lines).as("lines of " + paper)
                    .isEqualByComparingTo(table.matching(LINES).isEmpty() ? net : only(table, LINES));
            assertThat(lines.add(sum(amounts(table.matching(LESS))))).as("net of " + paper).isEqualByComparingTo(net);
            assertThat(net.add(only(table, TAX))).as("total of " + paper).isEqualByComparingTo(total);
            if (!parts.isEmpty()) {
                assertThat(sum(parts)).as("taxes of " + paper).isEqualByComparingTo(only(table, TAX));
            }
            assertThat(all.matching("USD [0-9.,]+.*").getFirst().amounts()).as("what is asked for by " + paper)
                    .first().isEqualTo(total);
        }
    }

    /** Lines to a visit, visits to a year, the plan's discount and step; and what is caught up on. */
    @Test
    void maintenanceQuotes_visitsAndYears() throws IOException {
        for (Path paper : named("MQ-.*")) {
            List<Row> rows = PrintedRows.of(paper).from(HEAD).rows();
            float margin = new PrintedRows(rows).margin();
            BigDecimal lines = BigDecimal.ZERO;
            BigDecimal visits = BigDecimal.ZERO;
            int sums = 0;
            for (Row row : rows) {
                String text = row.text();
                Optional<BigDecimal> amount = large(row).charged(margin);
                if (amount.isEmpty()) {
                    continue;
                }
                if (text.matches(
                        "(This visit|Each of these .*|Esta visita|Cada una de estas .*|First visit with .*) [0-9.,]+")) {
                    assertThat(lines).as(text + " in " + paper).isEqualByComparingTo(amount.get());
                    lines = BigDecimal.ZERO;
                    sums++;
                } else if (text.matches("(All visits of the year|Todas las visitas del año) .*")) {
                    visits = amount.get();
                    assertThat(times(text.substring(0, text.lastIndexOf(' ')))).as(text).isEqualByComparingTo(visits);
                } else if (text.matches("(Less|Menos) .*%.*")) {
                    MatchResult percent = PERCENT.matcher(text).results().findFirst().orElseThrow();
                    assertThat(visits.multiply(new BigDecimal(percent.group(1))).movePointLeft(2)
                            .setScale(2, RoundingMode.HALF_UP).negate()).as(text).isEqualByComparingTo(amount.get());
                    visits = visits.add(amount.get());
                } else if (text.matches("(Price of a year|Precio de un año), .*")) {
                    BigDecimal step = row.amounts().getFirst();
                    assertThat(visits.divide(step, 0, RoundingMode.HALF_UP).multiply(step)).as(text)
                            .isEqualByComparingTo(amount.get());
                    sums++;
                } else if (text
                        .matches(
                                "(Less the same visit|Menos la misma visita|First-time deep cleaning, charged|Limpieza profunda inicial, se).*")) {
                    lines = BigDecimal.ZERO;
                } else {
                    lines = lines.add(amount.get());
                }
            }
            assertThat(sums).as("sums of " + paper).isGreaterThan(3);
        }
    }

    /** The first year and its tax are what is paid with tax, and the payments are the price of a year. */
    @Test
    void maintenanceQuotes_choices() throws IOException {
        for (Path paper : named("MQ-.*")) {
            PrintedRows table = PrintedRows.of(paper).between("(Your choices|Sus opciones).*",
                    "(Calls come on top|Los servicios por llamado se suman).*");
            int checked = 0;
            BigDecimal net = BigDecimal.ZERO;
            BigDecimal payments = BigDecimal.ZERO;
            for (Row row : table.rows()) {
                List<BigDecimal> amounts = row.amounts();
                if (amounts.size() >= 3) {
                    assertThat(payments).as(row.text()).isIn(BigDecimal.ZERO, net);
                    net = amounts.get(0);
                    payments = BigDecimal.ZERO;
                    assertThat(amounts.get(amounts.size() - 3).add(amounts.get(amounts.size() - 2))).as(row.text())
                            .isEqualByComparingTo(amounts.getLast());
                    checked++;
                }
                payments = payments.add(times(row.text()));
            }
            assertThat(payments).as(paper.toString()).isIn(BigDecimal.ZERO, net);
            assertThat(checked).isEqualTo(3);
        }
    }

    /** The price of a year and the changes in the term are the payments. */
    @Test
    void agreements_payments() throws IOException {
        for (Path paper : named("agreement-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            BigDecimal year = all.matching("(Price|Precio) .* (a year|al año|for the term), .*").getFirst().amounts()
                    .getFirst();
            BigDecimal changes = sum(amounts(all.between(".*(Changes in the term|Cambios en el plazo).*",
                    "(Terms|Condiciones)").large().rows()));
            PrintedRows table = all.between("(Payments|Pagos), .*", "(Terms|Condiciones|Changes|Cambios).*");

            assertThat(sum(amounts(table.matching("\\d+ .*")))).as(paper.toString())
                    .isEqualByComparingTo(year.add(changes));
        }
    }

    @Test
    void renewals_oldAndDifferenceAreNew() throws IOException {
        for (Path paper : named("renewal-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            assertThat(only(all, "(Until now|Hasta ahora) .*").add(only(all, "(Difference|Diferencia) .*")))
                    .isEqualByComparingTo(only(all, "(From the renewal on|Desde la renovación) .*"));
        }
    }

    /** Amount less what was paid is open; all that is open, all ages and all that happened are the balance. */
    @Test
    void statements_balance() throws IOException {
        for (Path paper : named("statement-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            PrintedRows open = all.between("(What is open|Lo pendiente).*", "(Balance on|Saldo al) .*\\(USD\\).*")
                    .large();
            BigDecimal balance = amounts(List.of(open.rows().getLast())).getFirst();
            List<BigDecimal> left = new ArrayList<>();
            for (Row row : open.rows().subList(0, open.rows().size() - 1)) {
                List<BigDecimal> amounts = row.amounts();
                if (amounts.size() == 3) {
                    assertThat(amounts.get(0).subtract(amounts.get(1))).as(row.text())
                            .isEqualByComparingTo(amounts.get(2));
                }
                left.addAll(amounts.isEmpty() ? List.of() : List.of(amounts.getLast()));
            }
            List<BigDecimal> ages = all.between("(How long|Antigüedad).*", "(Days are|Los días).*").rows().stream()
                    .map(Row::amounts).filter(found -> found.size() > 5).findFirst().orElseThrow();
            List<BigDecimal> happened = new ArrayList<>();
            BigDecimal running = BigDecimal.ZERO;
            for (Row row : all.between("(What happened|Movimientos).*", "(A minus|El signo).*").rows()) {
                List<BigDecimal> amounts = row.amounts();
                if (!amounts.isEmpty()) {
                    running = happened.isEmpty() ? amounts.getLast() : running.add(amounts.getFirst());
                    assertThat(running).as(row.text()).isEqualByComparingTo(amounts.getLast());
                    happened.add(running);
                }
            }

            assertThat(sum(left)).as(paper.toString()).isEqualByComparingTo(balance);
            assertThat(sum(ages.subList(0, 5))).as("ages").isEqualByComparingTo(ages.get(5));
            assertThat(ages.getLast()).isEqualByComparingTo(balance);
            assertThat(sum(ages.subList(5, Math.max(6, ages.size() - 1)))).isEqualByComparingTo(balance);
            assertThat(happened).last().isEqualTo(balance);
            assertThat(all.matching("USD [0-9.,]+.*").getFirst().amounts()).first().isEqualTo(balance);
        }
    }

    @Test
    void reminders_invoicesAndInterest() throws IOException {
        for (Path paper : named("reminder-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            PrintedRows due = all.between("(Invoices past due|Facturas vencidas).*",
                    "(Invoices together|Suma de las facturas).*").large();
            BigDecimal invoices = due.rows().getLast().amounts().getFirst();
            PrintedRows late = all.between(HEAD, "(Please pay|Importe que le pedimos) \\(USD\\).*").large();
            BigDecimal onTop = late.rows().isEmpty() ? BigDecimal.ZERO : only(late, "(Interest and|Intereses y) .*");

            assertThat(sum(due.rows().subList(0, due.rows().size() - 1).stream().map(Row::amounts)
                    .filter(found -> !found.isEmpty()).map(List::getLast).toList())).isEqualByComparingTo(invoices);
            assertThat(sum(amounts(late.matching("(?!(Interest and|Intereses y|Importe que|Please) ).*"))))
                    .isEqualByComparingTo(onTop);
            assertThat(all.matching("USD [0-9.,]+.*").getFirst().amounts()).first()
                    .isEqualTo(invoices.add(onTop));
        }
    }

    /** What the account's papers say of an invoice that the demo issued is what that invoice says. */
    @Test
    void accounts_sayOfInvoicesWhatTheyAre() throws IOException {
        List<String> issued = new ArrayList<>();
        for (Path paper : named("INV-.*")) {
            issued.add(paper.getFileName().toString().replace(".pdf", "") + " "
                    + PrintedRows.of(paper).matching("USD [0-9.,]+.*").getFirst().amounts().getFirst());
        }
        List<String> told = new ArrayList<>();
        for (Path paper : named("(statement|reminder)-.*")) {
            PrintedRows.of(paper).matching("(Invoice|Factura) INV-.*").stream().filter(row -> row.amounts().size() > 1)
                    .map(row -> row.words().get(1).text() + " " + row.amounts().getFirst()).forEach(told::add);
        }

        assertThat(told).hasSizeGreaterThan(5);
        assertThat(issued).containsAll(told);
    }

    /** Each brushing sheet's own figures; the last line alone is rounded, to fifty. */
    @Test
    void brushingSheets_differenceAndYear() throws IOException {
        for (Path paper : named("brushing-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            BigDecimal ours = last(all, ".*One brushing by us.*");
            BigDecimal left = last(all, ".*Calls for a dirty condenser.*").add(last(all, ".*Brushings that you paid.*"))
                    .add(last(all, ".*Less twelve brushings.*"));

            assertThat(ours.subtract(last(all, ".*One brushing by your own people.*", 0))
                    .subtract(last(all, ".*A soft nylon brush, bought.*", 0)))
                    .isEqualByComparingTo(last(all, ".*Difference the first time.*", -1));
            assertThat(all.matching(".*Left in a year, about.*").getFirst().text())
                    .endsWith(" " + left.divide(BigDecimal.valueOf(50), 0, RoundingMode.HALF_UP)
                            .multiply(BigDecimal.valueOf(50)).toBigInteger());
        }
    }

    /** The owner's columns: what the parts of calls, of what is paid and of the margin come to. */
    @Test
    void ownersPages_columns() throws IOException {
        for (Path paper : named("owner-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            List<BigDecimal> together = all.matching("In all, on average \\(mean\\) .*").getFirst().amounts();
            List<BigDecimal> margins = all.matching("Margin together .*").getFirst().amounts();
            assertThat(together).hasSizeGreaterThan(2);
            for (int way = 0; way < together.size(); way++) {
                assertThat(column(all, way, "Planned price, a year .*", "First-time deep cleaning, once .*",
                        "Calls cost, on average .*"))
                        .isEqualByComparingTo(together.get(way));
                assertThat(column(all, way, "Margin on planned .*", "Margin on calls .*", "Margin on deep .*"))
                        .isEqualByComparingTo(margins.get(way));
            }
        }
    }

    /** Planned and calls are the cash, and that with what dirt costs besides is all; sentences say what the table says. */
    @Test
    void comparisons_yearsAddUp() throws IOException {
        for (Path paper : named("comparison-.*")) {
            PrintedRows all = PrintedRows.of(paper);
            List<List<BigDecimal>> ways = all.between("(What the first year|Cuánto puede sumar) .*",
                    "(Before tax, as|Antes de impuestos, lo) .*").rows().stream().map(Row::text)
                    .map(text -> numbers(text, "(?: |^)([0-9][0-9,]*(?:\\.[0-9]+)?|–)(?= |$)"))
                    .filter(row -> row.size() == 6)
                    .toList();
            String text = all.rows().stream().map(Row::text).collect(Collectors.joining(" "));
            List<BigDecimal> told = Stream
                    .of("(?:comes to about|suma unos) ([0-9,.]+) (?:with|con)",
                            "(?:the plan and|el plan y) ([0-9,.]+) (?:if|si)",
                            "(?:it is about|son unos) ([0-9,.]+) (?:against|contra)",
                            "(?:against|contra) ([0-9,.]*[0-9])")
                    .map(pattern -> numbers(text, pattern).getFirst()).toList();

            assertThat(ways).as(text).hasSize(4);
            ways.forEach(way -> {
                assertThat(way.get(1).add(way.get(2))).as(paper + " " + way).isEqualByComparingTo(way.get(3));
                assertThat(way.get(3).add(way.get(4))).as(paper + " " + way).isEqualByComparingTo(way.get(5));
            });
            assertThat(told).usingElementComparator(BigDecimal::compareTo).containsExactly(ways.getFirst().get(3),
                    ways.getLast().get(3), ways.getFirst().get(5), ways.getLast().get(5));
        }
    }

    /** A dash is nothing. */
    private static List<BigDecimal> numbers(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results()
                .map(found -> new BigDecimal(found.group(1).replace(",", "").replace("–", "0"))).toList();
    }

    private static BigDecimal column(PrintedRows all, int way, String... rows) {
        return sum(Stream.of(rows).map(row -> all.matching(row).getFirst().amounts().get(way)).toList());
    }

    private static List<Path> named(String pattern) {
        List<Path> found = papers.stream().filter(paper -> paper.getFileName().toString().matches(pattern)).toList();
        assertThat(found).as(pattern).isNotEmpty();
        return found;
    }

    private static Row large(Row row) {
        List<Row> rows = new PrintedRows(List.of(row)).large().rows();
        return rows.isEmpty() ? new Row(List.of()) : rows.getFirst();
    }

    private static BigDecimal charged(Row row, float margin) {
        return row.charged(margin).orElseThrow(() -> new AssertionError("no amount: " + row.text()));
    }

    private static BigDecimal only(PrintedRows rows, String pattern) {
        List<Row> found = rows.matching(pattern);
        assertThat(found).as(pattern + " in " + rows.rows()).hasSize(1);
        return found.getFirst().amounts().getLast();
    }

    private static BigDecimal last(PrintedRows rows, String pattern) {
        return last(rows, pattern, -1);
    }

    /** The amount at a place of the first row that matches; the last one for a negative place. */
    private static BigDecimal last(PrintedRows rows, String pattern, int at) {
        List<BigDecimal> amounts = rows.matching(pattern).getFirst().amounts();
        return at < 0 ? amounts.getLast() : amounts.get(at);
    }

    /** The last amount of each row that has one. */
    private static List<BigDecimal> amounts(List<Row> rows) {
        return rows.stream().map(Row::amounts).filter(found -> !found.isEmpty()).map(List::getLast).toList();
    }

    private static BigDecimal times(String text) {
        return sum(TIMES.matcher(text).results().map(found -> new BigDecimal(found.group(1))
                .multiply(new BigDecimal(found.group(2).replace(",", "")))).toList());
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
