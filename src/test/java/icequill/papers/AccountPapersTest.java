package icequill.papers;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.document.Reminder.Level;
import icequill.document.Statement;
import icequill.money.Amounts;
import icequill.office.AccountOffice;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.Printer;
import icequill.render.words.Sentences;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.AccountLoader;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Statements and reminders of the invented shop's customers. */
@Tag("wide")
class AccountPapersTest {

    private static final LocalDate DAY = LocalDate.of(2026, 8, 31);
    private static final String HOTEL = "fernhill-hotels";
    private static final String MARKET = "mercado-del-mar";

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() throws IOException {
        folder = temporary.resolve("shop");
        DemoShop.in(folder);
        for (String name : List.of(HOTEL, MARKET)) {
            Files.copy(Path.of("src/test/resources/accounts/" + name + ".yaml"),
                    folder.resolve("accounts/" + name + ".yaml"), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /**
     * 284.20 + 325.65 + 542.11 + 607.88 + 36.91 + 326.63 open, 40.00 on account. Brought forward: all invoices up to 1 June,
     * 1184.20 + 412.75 + 542.11 + 646.86 + 607.88, of which nothing was paid by then.
     */
    @Test
    void statement_hotel_figuresByHand() {
        Statement statement = papers(HOTEL, DAY, Language.ENGLISH).statement(Optional.empty());

        assertThat(statement.owed()).extracting(owed -> owed.number() + " " + Amounts.plain(owed.open()))
                .containsExactly("2026-0031 284.20", "2026-0058 325.65", "INV-2026-00007 542.11",
                        "INV-2026-00011 607.88",
                        "INV-2026-00014 36.91", "2026-0093 326.63");
        assertThat(Amounts.plain(statement.ageing().notYetDue())).isEqualTo("326.63");
        assertThat(statement.ageing().pastDue()).extracting(Amounts::plain).containsExactly("36.91", "607.88",
                "867.76", "284.20");
        assertThat(Amounts.plain(statement.balance())).isEqualTo("2083.38");
        assertThat(Amounts.plain(statement.broughtForward())).isEqualTo("3393.80");
        assertThat(statement.lines()).extracting(line -> Amounts.plain(line.balance())).containsExactly("2493.80",
                "2406.70", "2443.61", "1796.75", "2123.38", "2083.38");
    }

    @Test
    void statement_sinceTheBeginning_nothingBroughtForward() {
        Statement statement = papers(HOTEL, DAY, Language.ENGLISH)
                .statement(Optional.of(LocalDate.of(2026, 1, 1)));

        assertThat(statement.broughtForward().isZero()).isTrue();
        assertThat(statement.lines()).hasSize(11);
        assertThat(statement.lines().getLast().balance()).isEqualTo(statement.balance());
    }

    /** 284.20 - 40.00 of credit, 325.65, 542.11 - 196.00 disputed, 607.88, 36.91; nothing on top, since nothing was agreed. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void reminder_hotel_creditSetOffAndDisputeLeftOut(Level level) {
        Reminder reminder = papers(HOTEL, DAY, Language.ENGLISH).reminder(level).orElseThrow();

        assertThat(reminder.claims().claims()).extracting(claim -> Amounts.plain(claim.asked()))
                .containsExactly("244.20", "325.65", "346.11", "607.88", "36.91");
        assertThat(Amounts.plain(reminder.claims().total())).isEqualTo("1560.75");
        assertThat(reminder.late()).isEmpty();
        assertThat(reminder.by()).isEqualTo("2026-09-10");
        assertThat(reminder.earlier()).containsExactly(LocalDate.of(2026, 7, 27));
    }

    /** 268.40, 602.82 and 391.98 at 12 % for 122, 78 and 34 days; and 25, 40 and 25. The first reminder only asks. */
    @ParameterizedTest
    @CsvSource({"FIRST, 0.00, 1263.20", "SECOND, 120.61, 1383.81", "LAST, 120.61, 1383.81"})
    void reminder_market_interestFromTheSecondOn(Level level, String onTop, String total) {
        Reminder reminder = papers(MARKET, DAY, Language.SPANISH).reminder(level).orElseThrow();

        assertThat(Amounts.plain(reminder.claims().onTop())).isEqualTo(onTop);
        assertThat(Amounts.plain(reminder.claims().total())).isEqualTo(total);
        assertThat(reminder.late().isPresent()).isEqualTo(level != Level.FIRST);
    }

    /** The shop's own terms hold for whoever has agreed to no others. */
    @Test
    void reminder_shopsTerms_holdForTheHotel() throws IOException {
        Path file = folder.resolve("shop.yaml");
        Files.writeString(file, Files.readString(file) + "  phone: 555-0199\n"
                + "  latePayment: {rate: 6, cap: 9, dayBase: 360, basis: {en: our terms, es: condiciones}}\n");

        Reminder reminder = papers(HOTEL, DAY, Language.ENGLISH).reminder(Level.SECOND).orElseThrow();

        // 244.20 x 6 % x 106 / 360 = 4.314; 4.288; 3.8649; 4.356; 0.098
        assertThat(reminder.claims().claims()).extracting(claim -> Amounts.plain(claim.onTop()))
                .containsExactly("4.31", "4.29", "3.86", "4.36", "0.10");
        assertThat(reminder.contact()).isEqualTo(new Reminder.Contact(Optional.of("Rosa Idler"), "555-0199"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void papers_say_whatIsAskedAndWhatIsNot(Language language) {
        Sentences sentences = Sentences.of(language, "US");
        AccountPapers papers = papers(HOTEL, DAY, language);
        String statement = html(papers.statement(Optional.empty()));
        String first = html(papers.reminder(Level.FIRST).orElseThrow());
        String last = html(papers.reminder(Level.LAST).orElseThrow());

        assertThat(List.of(statement, first, last)).allSatisfy(
                page -> assertThat(page).contains(sentences.word("pay.warning"), "Millrace Savings", "FH-21040"));
        assertThat(statement).contains(sentences.word("ageing.note"), "2,083.38", "Sunday rate after midnight");
        assertThat(first).contains(sentences.word("reminder.opening.1"), sentences.word("reminder.disputed-note"),
                "Rosa Idler", "1,560.75").doesNotContain(sentences.word("reminder.late"));
        assertThat(last).contains(sentences.word("reminder.title.3"), sentences.word("reminder.opening.3"));
    }

    @Test
    void statement_laterPayment_leftOutAndSaid() {
        LocalDate day = LocalDate.of(2026, 7, 1);

        WrittenPaper written = office(HOTEL).statement(new FormName.InBook(HOTEL), options(day), Optional.empty())
                .orElseThrow();
        String html = html(papers(HOTEL, day, Language.ENGLISH).statement(Optional.empty()));

        assertThat(written.name()).isEqualTo("statement-fernhill-hotels-2026-07-01");
        assertThat(written.notices()).extracting(Problem::text).hasSize(3).first().asString()
                .isEqualTo("accounts/fernhill-hotels.yaml:28: invoices[3].payments[0]: -646.86 dated 2026-07-02 is "
                        + "left out (up to 2026-07-01)");
        assertThat(html)
                .contains("Dated later and so not counted here: Payment for INV-2026-00008, July 2, 2026, "
                        + "−646.86; Invoice 2026-0093");
    }

    @Test
    void reminder_nothingPastDue_isAProblem() {
        Validated<Reminder> reminder = papers(MARKET, LocalDate.of(2026, 4, 26), Language.SPANISH)
                .reminder(Level.FIRST);

        assertThat(reminder.problems()).extracting(Problem::text).singleElement().asString()
                .startsWith("nothing of mercado-del-mar is past due on 2026-04-26");
    }

    @Test
    void statement_ofAFile_saysHowToLayItOverTheBook() {
        assertThat(office(HOTEL).statement(FormName.file(Path.of("hotel.yaml")), options(DAY), Optional.empty())
                .problems()).extracting(Problem::text).containsExactly(
                        "hotel.yaml: an account is worked out of the book, not of a file (the id of a customer;"
                                + " --with hotel.yaml lays the form of an account over the book)");
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', value = {
            "amount: 500.00 | amount: 1102.83 | OUT_OF_RANGE :8 | the payments: 1102.83, more than 1102.82",
            "amount: 500.00 | amount: 500.001 | OUT_OF_RANGE :14 | finer than USD is paid",
            "amount: 500.00 | amount: -1 | OUT_OF_RANGE :14 | from 0 to 1000000",
            "number: INV-2026-00015 | number: INV-2026-00012 | DUPLICATE_NAME :15 | stands at accounts/mercado-del-mar.yaml:8 already",
            "form: account | form: account~site: mercado-del-mar | UNKNOWN_KEY :5 | site",
            "currency: USD | currency: EUR | NOT_ALLOWED :5 | it is in EUR, the shop's bills are in USD",
            "due: 2026-07-23 | due: 2026-07-07 | WRONG_ORDER :15 | due on 2026-07-07, but dated 2026-07-08",
            "date: 2026-06-30 | date: 2026-06-31 | NOT_ALLOWED :14 | there is no day 2026-06-31",
            "rate: 12 | rate: 16.5 | OUT_OF_RANGE :18 | a rate of 16.5 %, above its cap (at most the cap of 16 %)",
            "rate: 12 | rate: 101 | OUT_OF_RANGE :18 | from 0 to 100",
            "cap: 16 | graceDay: 4 | UNKNOWN_KEY :19 | did you mean \"graceDays\"?"})
    void account_wrongInput_aProblemWithItsPlace(String right, String wrong, String where, String message)
            throws IOException {
        Path file = folder.resolve("accounts/" + MARKET + ".yaml");
        Files.writeString(file, Files.readString(file).replace(right, wrong.replace('~', '\n')));

        List<Problem> problems = office(MARKET).statement(new FormName.InBook(MARKET), options(DAY), Optional.empty())
                .problems();

        assertThat(problems).as(problems.toString())
                .anyMatch(problem -> (problem.code() + " " + problem.place().reference())
                        .equals(where.replace(":", "accounts/mercado-del-mar.yaml:"))
                        && problem.text().contains(message));
        assertThat(folder.resolve("papers/statement-" + MARKET + "-" + DAY + ".pdf")).doesNotExist();
    }

    private String html(Paper paper) {
        return Printer.of(folder).html(paper).orElseThrow().text().replace("&#39;", "'");
    }

    private static PaperOptions options(LocalDate day) {
        return new PaperOptions(Optional.empty(), day, Optional.empty(), Extras.NONE);
    }

    private AccountOffice office(String name) {
        return AccountOffice.of(book(name));
    }

    /** The book of a shop that has issued nothing, with the form of an account laid over it. */
    private ShopBook book(String name) {
        return ShopBook.of(folder, Clock.systemUTC()).with(List.of(folder.resolve("accounts/" + name + ".yaml")));
    }

    private AccountPapers papers(String name, LocalDate day, Language language) {
        return new AccountPapers(new AccountLoader(book(name)).of(new FormName.InBook(name), day).orElseThrow(),
                language);
    }
}
