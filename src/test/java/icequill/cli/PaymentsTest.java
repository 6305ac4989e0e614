package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import icequill.ledger.store.Connections;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What customers pay, and what it is for, by commands, forms and lists. */
@Tag("wide")
class PaymentsTest {

    private static final String PAYER = "pennon-wharf-taproom";
    private static final String CALL = "INV-2026-00001";
    private static final String EARLIER = "2026-0099";

    private static final String HOTEL = Path.of("src/test/resources/accounts/fernhill-hotels.yaml").toAbsolutePath()
            .toString();

    @TempDir
    Path folder;

    /** Owes 301.13 for the late call, due on 12 June, and 94.72 (87.00 and 7.72 of tax) from before the book, due on 1 July. */
    private BookShop owing(Database database, String name) throws IOException {
        BookShop shop = BookShop.in(folder.resolve(name), database);
        assertThat(shop.issue("late-call", "2026-05-13").path("gross").asString()).isEqualTo("301.13");
        shop.json("import", shop.write("before.yaml", """
                form: account
                format: 1
                id: pennon-wharf-taproom
                invoices:
                  - {number: 2026-0099, date: 2026-06-01, due: 2026-07-01, total: 94.72}
                """).toString());
        return shop;
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void paymentWithoutReference_longestDueFirst_restOpenOrOnAccount(Database database) throws IOException {
        BookShop shop = owing(database, "shop");

        JsonNode first = shop.json("payment", "add", PAYER, "350.00", "--date", "2026-07-02");
        JsonNode statement = statement(shop, "2026-07-31");

        assertThat(shares(first)).containsExactly(CALL + " 301.13", EARLIER + " 48.87");
        assertThat(first.path("reason").asString()).isEqualTo("longest-due");
        assertThat(first.path("onAccount").asString()).isEqualTo("0.00");
        assertThat(statement.path("owed")).hasSize(1);
        assertThat(statement.path("owed").get(0).path("open").asString()).isEqualTo("45.85");
        assertThat(statement.path("balance").asString()).isEqualTo("45.85");
        assertThat(shop.json("show", CALL).path("paper").path("paid").path("open").asString()).isEqualTo("0.00");
        assertThat(shop.json("show", CALL).path("paper").path("paid").path("paid").asString()).isEqualTo("301.13");

        // Withdrawn it counts on no day; 400.00 instead leaves 4.15 on account.
        assertThat(shop.problems("payment", "withdraw", first.path("id").asString()).getFirst())
                .contains("no reason is given");
        shop.json("payment", "withdraw", first.path("id").asString(), "--reason", "It was Harbor Street's.");
        assertThat(statement(shop, "2026-07-31").path("balance").asString()).isEqualTo("395.85");
        JsonNode second = shop.json("payment", "add", PAYER, "400.00", "--date", "2026-07-02");

        assertThat(shares(second)).containsExactly(CALL + " 301.13", EARLIER + " 94.72");
        assertThat(second.path("onAccount").asString()).isEqualTo("4.15");
        assertThat(statement(shop, "2026-07-31").path("balance").asString()).isEqualTo("-4.15");
        assertThat(statement(shop, "2026-07-01").path("balance").asString()).isEqualTo("395.85");
        assertThat(shop.run("payment", "list").out()).contains("(withdrawn)", "400.00");
        assertThat(html(shop, "en")).contains("Payment for INV-2026-00001, 2026-0099, the rest on account");
        assertThat(html(shop, "es")).contains("Pago de INV-2026-00001, 2026-0099, el resto a cuenta");
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(shop.run("payment", "show", first.path("id").asString()).out()).contains("It was Harbor Street's.");
    }

    /** What is on account is taken for a later invoice, and counts there from that day on. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void moneyOnAccount_isTakenForALaterInvoice(Database database) throws IOException {
        BookShop shop = owing(database, "shop");
        shop.json("payment", "add", PAYER, "400.00", "--date", "2026-07-02", "--id", "july");
        shop.issue("callback-taproom", "2026-07-10");
        JsonNode later = shop.issue("valve-repair-taproom", "2026-07-10");

        JsonNode payment = shop.json("payment", "allot", "july", "--for", later.path("number").asString(), "--date",
                "2026-07-20");

        assertThat(shares(payment)).endsWith(later.path("number").asString() + " 4.15");
        assertThat(payment.path("onAccount").asString()).isEqualTo("0.00");
        assertThat(open(statement(shop, "2026-07-19"))).contains(later.path("gross").asString());
        assertThat(statement(shop, "2026-07-19").path("credits")).hasSize(1);
        assertThat(open(statement(shop, "2026-07-20")))
                .containsExactly(minus(later.path("gross").asString(), "4.15"));
        assertThat(statement(shop, "2026-07-20").path("balance")).isEqualTo(statement(shop, "2026-07-19")
                .path("balance"));
        assertThat(shop.problems("payment", "allot", "july").getFirst())
                .contains("nothing of payment \"july\" is on");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** A credit note after the invoice was paid is the customer's money, and goes back to him. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void creditNote_isPaidBack(Database database) throws IOException {
        BookShop shop = owing(database, "shop");
        shop.json("payment", "add", PAYER, "301.13", "--date", "2026-06-02");
        shop.json("credit", "issue", CALL, "--lines", "3", "--date", "2026-07-10", "--reason", "We were late.");
        assertThat(statement(shop, "2026-07-31").path("credits").get(0).path("open").asString())
                .isEqualTo("-173.38");

        assertThat(shop.problems("payment", "add", PAYER, "173.39", "--back", "yes", "--date", "2026-07-15"))
                .singleElement().asString().contains("0.01 of 173.39 paid back is for no credit note");
        assertThat(shop.problems("payment", "add", PAYER, "1.00", "--back", "yes", "--for", CALL).getFirst())
                .contains(CALL + " cannot be paid: it is no credit note");
        JsonNode back = shop.json("payment", "add", PAYER, "173.38", "--back", "yes", "--date", "2026-07-15");

        assertThat(shares(back)).containsExactly("CN-2026-00001 173.38");
        assertThat(shop.json("show", "CN-2026-00001").path("paper").path("paid").path("paid").asString())
                .isEqualTo("173.38");
        assertThat(statement(shop, "2026-07-31").path("credits")).isEmpty();
        assertThat(statement(shop, "2026-07-31").path("balance").asString()).isEqualTo("94.72");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** Every kind of mistake in one file: all told at once, each with its line, and nothing is stored. */
    @Test
    void wrongPayments_allProblemsAtOnce() throws IOException {
        BookShop shop = owing(Database.SQLITE, "shop");
        shop.issue("ten-minute-brushing", "2026-05-20");
        Path file = shop.write("paid.yaml", """
                {format: 1, form: payment, id: over, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 400,
                 for: [{number: INV-2026-00001, amount: 301.14}]}
                ---
                {format: 1, form: payment, id: nowhere, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 5,
                 for: [{number: INV-2026-00077}]}
                ---
                {format: 1, form: payment, id: foreign, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 6,
                 for: [{number: INV-2026-00002}]}
                ---
                {format: 1, form: payment, id: more, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 300,
                 for: [{number: INV-2026-00001, amount: 300}, {number: 2026-0099, amount: 94.72}]}
                ---
                {format: 1, form: payment, id: twice, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 7,
                 for: [{number: 2026-0099, amount: 1}, {number: 2026-0099, amount: 1}]}
                ---
                {format: 1, form: payment, id: early, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 8,
                 for: [{number: 2026-0099, amount: 1, from: 2026-07-01}]}
                ---
                {format: 1, form: payment, id: future, customer: pennon-wharf-taproom, date: 2026-12-31, amount: 9}
                ---
                {format: 1, form: payment, id: whose, customer: penon-wharf-taproom, date: 2026-07-02, amount: 10}
                """);
        Path wrong = shop.write("wrong.yaml",
                """
                        {format: 1, form: payment, id: minus, customer: pennon-wharf-taproom, date: 2026-07-02, amount: -5}
                        ---
                        {format: 1, form: payment, id: none, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 0}
                        ---
                        {format: 1, form: payment, id: fine, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 5.001}
                        ---
                        {format: 1, form: payment, id: euro, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 5,
                         currency: EUR}
                        ---
                        {format: 1, form: payment, id: both, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 5,
                         onAccount: true, for: [{number: 2026-0099}]}
                        ---
                        {format: 1, form: payment, id: way, customer: pennon-wharf-taproom, date: 2026-07-32, amount: 5, way: gold}
                        """);

        assertThat(shop.problems("import", file.toString())).hasSize(8)
                .anySatisfy(
                        text -> assertThat(text).contains("paid.yaml:2", "301.14 for INV-2026-00001, of which 301.13",
                                "at most 301.13; the rest stays on account"))
                .anySatisfy(text -> assertThat(text).contains("paid.yaml:5", "INV-2026-00077"))
                .anySatisfy(text -> assertThat(text).contains("paid.yaml:8",
                        "INV-2026-00002 cannot be paid: it is for customer \"crumb-lane-bakery"))
                .anySatisfy(text -> assertThat(text).contains("paid.yaml:10",
                        "the parts for bills: 394.72, more than the 300.00 that there is"))
                .anySatisfy(text -> assertThat(text).contains("paid.yaml:14", "2026-0099 stands here a second time"))
                .anySatisfy(text -> assertThat(text).contains("paid.yaml:17", "from 2026-07-01 on, before the payment"))
                .anySatisfy(text -> assertThat(text).contains("paid on 2026-12-31, but today is 2026-12-30"))
                .anySatisfy(text -> assertThat(text).contains("the book has no customer \"penon-wharf-taproom\"",
                        "did you mean \"pennon-wharf-taproom\"?"));
        assertThat(shop.problems("import", wrong.toString()))
                .anySatisfy(text -> assertThat(text).contains("wrong.yaml:1", "above 0 and up to"))
                .anySatisfy(text -> assertThat(text).contains("wrong.yaml:3", "nothing is paid"))
                .anySatisfy(text -> assertThat(text).contains("wrong.yaml:5", "finer than USD is paid"))
                .anySatisfy(
                        text -> assertThat(text).contains("wrong.yaml:8", "it is in EUR, the shop's bills are in USD"))
                .anySatisfy(text -> assertThat(text).contains("wrong.yaml:11", "both on account and for bills"))
                .anySatisfy(text -> assertThat(text).contains("there is no day 2026-07-32"))
                .anySatisfy(text -> assertThat(text).contains("\"gold\""));
        assertThat(shop.json("payment", "list").path("payments")).isEmpty();
    }

    /** By commands, by forms and by a list the same book; what is given back is the same when it is taken in again. */
    @Test
    void byCommandsFormsAndList_theSame() throws IOException {
        BookShop commands = owing(Database.SQLITE, "commands");
        commands.json("payment", "add", PAYER, "350.00", "--id", "july", "--date", "2026-07-02", "--way", "check",
                "--reference", "check 2207", "--for", "INV-2026-00001 | amount: 301.13; 2026-0099 | amount: 40.00");
        commands.json("payment", "allot", "july", "--date", "2026-07-09");
        commands.json("payment", "add", PAYER, "12.00", "--id", "extra", "--date", "2026-07-20", "--way", "cash",
                "--on-account", "yes");
        BookShop list = owing(Database.SQLITE, "list");
        list.json("import",
                list.write("paid.csv",
                        """
                                payment,customer,date,amount,way,reference,for,onAccount
                                july,pennon-wharf-taproom,2026-07-02,350.00,check,check 2207,INV-2026-00001 | amount: 301.13; 2026-0099 | amount: 40.00,
                                extra,pennon-wharf-taproom,2026-07-20,12.00,cash,,,yes
                                """)
                        .toString());
        list.json("payment", "allot", "july", "--date", "2026-07-09");
        BookShop forms = owing(Database.POSTGRESQL, "forms");
        Path exported = folder.resolve("paid.yaml");
        commands.json("export", exported.toString(), "july", "extra", PAYER);

        assertThat(states(forms.json("import", exported.toString()))).containsExactlyInAnyOrder(
                "customer " + PAYER + " same", "site " + PAYER + " same", "account " + PAYER + " same",
                "payment july new", "payment extra new");
        assertThat(states(forms.json("import", exported.toString()))).allMatch(state -> state.endsWith(" same"));
        for (BookShop other : List.of(list, forms)) {
            other.json("export", folder.resolve(other.folder().getFileName() + ".yaml").toString(), "july", "extra",
                    PAYER);
            assertThat(folder.resolve(other.folder().getFileName() + ".yaml")).hasSameTextualContentAs(exported);
            assertThat(statement(other, "2026-07-31")).isEqualTo(statement(commands, "2026-07-31"));
            assertThat(other.json("audit").path("findings")).isEmpty();
        }
        assertThat(statement(commands, "2026-07-31").path("balance").asString()).isEqualTo("33.85");
    }

    /** What was noted is never another; the same money noted a second time is told. */
    @Test
    void notedPayment_isNotChanged_norNotedTwice() throws IOException {
        BookShop shop = owing(Database.SQLITE, "shop");
        String form = "{format: 1, form: payment, id: july, customer: pennon-wharf-taproom, date: 2026-07-02, amount: 10, "
                + "for: [{number: INV-2026-00001}]}\n";
        shop.json("import", shop.write("july.yaml", form).toString());

        assertThat(shop.problems("import", shop.write("july.yaml", form.replace("10", "11")).toString()).getFirst())
                .contains("payment \"july\" was noted otherwise", "icequill payment withdraw july");
        assertThat(shop.problems("import", shop.write("july.yaml", form.replace("july", "again")).toString())
                .getFirst()).contains("10.00 of 2026-07-02 is noted already, as payment \"july\"");
        shop.json("payment", "withdraw", "july", "--reason", "Twice.");
        assertThat(shop.problems("import", shop.write("july.yaml", form).toString()).getFirst())
                .contains("payment \"july\" was withdrawn: Twice.");
        assertThat(shop.problems("payment", "withdraw", "july", "--reason", "Again.").getFirst())
                .contains("was withdrawn: Twice.");
        assertThat(shop.problems("payment", "show", "jully").getFirst()).contains("did you mean \"july\"?");
    }

    /** A bill from before the book that was paid does not go; nor is an invoice disputed that is not there. */
    @Test
    void account_ofWhatWasPaid_stays() throws IOException {
        BookShop shop = owing(Database.SQLITE, "shop");
        shop.json("payment", "add", PAYER, "94.72", "--date", "2026-07-02");

        assertThat(shop.problems("import", shop.write("none.yaml", """
                {form: account, format: 1, id: pennon-wharf-taproom, disputed: [{number: INV-2026-00009, reason: x}]}
                """).toString())).hasSize(2).anySatisfy(text -> assertThat(text).contains("invoice 2026-0099 was paid"))
                .anySatisfy(text -> assertThat(text).contains("INV-2026-00009", "did you mean \"INV-2026-00001\"?"));
        assertThat(shop.problems("import", shop.write("taken.yaml", """
                form: account
                format: 1
                id: pennon-wharf-taproom
                invoices:
                  - {number: 2026-0099, date: 2026-06-01, due: 2026-07-01, total: 94.72}
                  - {number: INV-2026-00001, date: 2026-06-01, due: 2026-07-01, total: 94.72}
                """).toString()).getFirst()).contains("the number \"INV-2026-00001\" stands at taken.yaml:6 already");
    }

    /** The bills of a group's customers that are billed through it are its account; who leaves the group takes his paid bills along. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void group_paysForThoseBilledThroughIt(Database database) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), database);
        String[] address = {"--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY", "--postal-code", "10999",
                "--country", "US"};
        shop.json(with(address, "customer", "add", "group", "--name", "Wharf Group"));
        shop.json("customer", "add", "branch", "--name", "Wharf Branch", "--parent", "group");
        shop.json("site", "change", PAYER, "--customer", "branch");
        shop.issue("late-call", "2026-05-13");

        assertThat(shop.problems("payment", "add", "branch", "5").getFirst())
                .contains("customer \"branch\" is billed through \"group\"");
        assertThat(shop.problems("customer", "statement", "branch", "--date", "2026-07-31").getFirst())
                .contains("customer \"branch\" is billed through \"group\"");
        assertThat(shares(shop.json("payment", "add", "group", "100.00", "--date", "2026-07-02")))
                .containsExactly(CALL + " 100.00");
        assertThat(statement(shop, "group", "2026-07-31").path("balance").asString()).isEqualTo("201.13");

        shop.json(with(address, "customer", "change", "branch"));
        assertThat(statement(shop, "branch", "2026-07-31").path("balance").asString()).isEqualTo("201.13");
        assertThat(statement(shop, "group", "2026-07-31").path("balance").asString()).isEqualTo("0.00");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void mergedForgottenAndRestored_paymentsAreKept(Database database) throws IOException {
        BookShop shop = owing(database, "shop");
        shop.json("payment", "add", PAYER, "350.00", "--date", "2026-07-02", "--id", "july", "--reference",
                "Jo Wharf 4711");
        shop.json("payment", "add", PAYER, "1.00", "--date", "2026-07-03", "--id", "slip");
        shop.json("payment", "withdraw", "slip", "--reason", "Jo Wharf says it was hers.");
        shop.json("customer", "add", "wharf", "--name", "Wharf", "--street", "1 Quay", "--city", "Alderton", "--region",
                "NY", "--postal-code", "10999", "--country", "US");
        JsonNode before = statement(shop, "2026-07-31");

        JsonNode merged = shop.json("customer", "merge", PAYER, "--into", "wharf", "--yes");

        assertThat(merged.path("moved").toString()).contains("payments", "july", "slip");
        assertThat(statement(shop, "wharf", "2026-07-31")).isEqualTo(before);
        assertThat(shop.json("audit").path("findings")).isEmpty();
        Path backup = folder.resolve("book.backup");
        shop.json("backup", backup.toString());
        BookShop restored = BookShop.empty(folder.resolve("restored"), database);
        restored.json("restore", backup.toString());
        assertThat(statement(restored, "wharf", "2026-07-31")).isEqualTo(before);

        shop.json("customer", "forget", "wharf", "--yes");

        JsonNode payment = shop.json("payment", "show", "july");
        assertThat(payment.path("amount").asString()).isEqualTo("350.00");
        assertThat(payment.path("reference").isMissingNode()).isTrue();
        assertThat(shop.run("export", folder.resolve("all.json").toString()).status()).isZero();
        assertThat(folder.resolve("all.json")).content().contains("july").doesNotContain("Jo Wharf");
        assertThat(shop.run("audit", "trail", "slip").out()).doesNotContain("Jo Wharf");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** What somebody with SQL makes of payments, the audit finds beside what the trail tells. */
    @Test
    void audit_findsWhatPaymentsCannotBe() throws IOException {
        BookShop shop = owing(Database.SQLITE, "shop");
        shop.json("payment", "add", PAYER, "350.00", "--date", "2026-07-02", "--id", "july");
        shop.issue("ten-minute-brushing", "2026-05-20");
        try (Connections connections = Connections.to(Database.SQLITE.place(shop.folder()))) {
            connections.writer().useHandle(handle -> {
                for (String trigger : List.of("payment_never_changes", "payment_share_never_changes")) {
                    handle.execute("DROP TRIGGER " + trigger);
                }
                handle.execute("INSERT INTO payment_share (payment_id, position, bill, counts_from, amount_minor)"
                        + " VALUES ('july', 3, 'INV-2026-00001', '2026-07-01', 1), ('july', 4, 'INV-2026-00002',"
                        + " '2026-07-02', 99999), ('july', 5, 'X-1', '2026-07-02', 1)");
            });
        }

        assertThat(shop.problemsOfAudit())
                .anyMatch(text -> text.contains("the shares of payment july come to USD 1350.01,"
                        + " not at most USD 350.00"))
                .anyMatch(
                        text -> text.contains("payments for INV-2026-00001 come to USD 301.14, but it says USD 301.13"))
                .anyMatch(text -> text.contains("payments for INV-2026-00002 come to USD 999.99"))
                .anyMatch(text -> text.contains("a payment is for a bill that the book does not have: july for X-1"))
                .anyMatch(text -> text.contains("counts before the payment, or the bill: july for INV-2026-00001"))
                .anyMatch(text -> text.contains("payments of pennon-wharf-taproom are for bills of crumb-lane-bakery"))
                .anyMatch(text -> text.contains("numbered from 0 without a gap: those of payment july"));
    }

    /** What a statement says is owed, it shows by invoice, by age and by movement. */
    @Test
    void json_ofAccounts_addsUp() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        JsonNode statement = shop
                .json("customer", "statement", "fernhill-hotels", "--with", HOTEL, "--date", "2026-08-31")
                .path("amounts");
        JsonNode reminder = shop
                .json("customer", "reminder", "fernhill-hotels", "--with", HOTEL, "--date", "2026-08-31")
                .path("amounts");

        BigDecimal balance = new BigDecimal(statement.path("balance").asString());
        assertThat(balance).isPositive().isEqualByComparingTo(
                sum(statement.path("owed"), "open").add(sum(statement.path("credits"), "open")));
        assertThat(new BigDecimal(statement.path("broughtForward").asString())
                .add(sum(statement.path("movements"), "amount"))).isEqualByComparingTo(balance);
        assertThat(new BigDecimal(reminder.path("asked").asString())).isPositive()
                .isEqualByComparingTo(sum(reminder.path("claims"), "asked"));
    }

    /** 2 % of 276.58 is 5.53; with 24.55 of tax, 295.60 is enough within ten days of 13 May. A day late, or a cent short, nothing is taken off. */
    @ParameterizedTest
    @CsvSource({"295.60, 2026-05-23, 0.00", "295.60, 2026-05-24, 5.53", "295.59, 2026-05-23, 5.54"})
    void paidEarly_whatWasOfferedIsTakenOff(String paid, String day, String left) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("early"), Database.SQLITE);
        Path adjustments = shop.folder().resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments,
                Files.readString(adjustments) + "\nearlyPayment: {percent: 2, days: 10, on: net}\n");
        shop.issue("late-call", "2026-05-13");

        shop.json("payment", "add", PAYER, paid, "--date", day);

        JsonNode statement = statement(shop, "2026-07-31");
        JsonNode known = shop.json("show", CALL).path("paper").path("paid");
        assertThat(statement.path("balance").asString()).isEqualTo(left);
        assertThat(known.path("open").asString()).isEqualTo(left);
        boolean isSettled = left.equals("0.00");
        for (String state : List.of("open", "part-paid", "paid")) {
            assertThat(shop.run("invoice", "list", "--state", state).out().contains(CALL))
                    .as(state).isEqualTo(state.equals("paid") == isSettled);
        }
        if (isSettled) {
            assertThat(statement.path("owed")).isEmpty();
            JsonNode taken = statement.path("movements").get(2);
            assertThat(taken.path("kind").asString()).isEqualTo("early-payment");
            assertThat(taken.path("amount").asString()).isEqualTo("-5.53");
            assertThat(taken.path("tax").asString()).isEqualTo("0.00");
            assertThat(known.path("discount").asString()).isEqualTo("5.53");
            assertThat(html(shop, "en")).contains("Taken off invoice INV-2026-00001 for paying early",
                    "the tax stays");
            assertThat(html(shop, "es")).contains("Descuento por pronto pago de la factura INV-2026-00001",
                    "el impuesto no cambia");
        } else {
            assertThat(open(statement)).containsExactly(left);
            assertThat(statement.path("movements")).hasSize(2);
            assertThat(known.has("discount")).isFalse();
        }
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static String html(BookShop shop, String language) throws IOException {
        JsonNode files = shop.json("customer", "statement", PAYER, "--date", "2026-08-15", "--lang", language, "--html")
                .path("files");
        return Files.readString(Path.of(files.get(1).asString()));
    }

    private static JsonNode statement(BookShop shop, String day) {
        return statement(shop, PAYER, day);
    }

    private static JsonNode statement(BookShop shop, String customer, String day) {
        return shop.json("customer", "statement", customer, "--date", day).path("amounts");
    }

    private static List<String> shares(JsonNode payment) {
        List<String> shares = new ArrayList<>();
        payment.path("allotted").forEach(
                share -> shares.add(share.path("number").asString() + " " + share.path("amount").asString()));
        return shares;
    }

    private static List<String> open(JsonNode statement) {
        List<String> open = new ArrayList<>();
        statement.path("owed").forEach(owed -> open.add(owed.path("open").asString()));
        return open;
    }

    private static BigDecimal sum(JsonNode rows, String name) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode row : rows) {
            sum = sum.add(new BigDecimal(row.path(name).asString()));
        }
        return sum;
    }

    private static String minus(String one, String other) {
        return new BigDecimal(one).subtract(new BigDecimal(other)).toPlainString();
    }

    private static List<String> states(JsonNode result) {
        List<String> states = new ArrayList<>();
        result.path("forms").forEach(form -> states.add(form.path("form").asString() + " " + form.path("id").asString()
                + " " + form.path("state").asString()));
        return states;
    }

    private static String[] with(String[] more, String... line) {
        List<String> all = new ArrayList<>(List.of(line));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
