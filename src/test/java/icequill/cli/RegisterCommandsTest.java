package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Customers, sites and machines of the book: by flags, files and lists; sites that stand only there; what is forgotten. */
@Tag("wide")
class RegisterCommandsTest {

    private static final String VISIT = """
            format: 1
            site: mill-lane
            serviceCall: charged
            people:
              - {name: Rosa, grade: lead, arrived: 2026-05-13T09:00, left: 2026-05-13T10:00, on: cleaning}
            machines:
              - {machine: back-bar, correction: Brushed the condenser.}
            """;

    @TempDir
    static Path common;

    /** With Mill Lane in its book; nothing more is stored in it. */
    private static BookShop unchanged;

    @TempDir
    Path other;

    @BeforeAll
    static void millLane() throws IOException {
        unchanged = BookShop.empty(common.resolve("shop"), Database.SQLITE);
        addMillLane(unchanged);
        unchanged.json("export", common.resolve("before.json").toString());
    }

    /** A file names a site too, but what it says is not taken in by a change. */
    @Test
    void change_ofNothing_isTold() {
        assertThat(unchanged.run("site", "change", "mill-lane").err()).contains("nothing is given to change",
                "icequill import FILE");
    }

    /** One hour of the lead, 98.00, and the service call within 30 miles, 52.00. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void site_onlyInTheBook_isPricedRecordedCheckedAndBilled(Database database) throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), database);
        addMillLane(shop);
        String visit = shop.write("visits/mill-lane-brushing.yaml", VISIT).toString();

        assertThat(shop.json("price", visit).path("net").asString()).isEqualTo("150.00");
        assertThat(shop.run("visit", "record", visit, "--html").out()).contains("record-mill-lane-brushing.pdf");
        assertThat(shop.run("invoice", "draft", visit).out()).contains("Mill Lane Bakery");
        assertThat(shop.run("check").status()).isZero();
        if (database == Database.POSTGRESQL) {
            shop.json("rates", "adopt", "--yes");
        }
        JsonNode invoice = shop.issue("mill-lane-brushing", "2026-05-14");
        assertThat(invoice.path("where").asString()).contains("Mill Lane Bakery", "Mill Lane 17", "4 Mill Lane");
        assertThat(shop.json("find", "ML-77").path("papers")).hasSize(1);
        shop.write("visits/mill-lane-brushing.yaml", VISIT.replace("mill-lane", "mill-lame"));
        assertThat(shop.problems("price", visit).getFirst()).contains("there is no site \"mill-lame\"",
                "did you mean \"mill-lane\"?");
    }

    private static void addMillLane(BookShop shop) {
        shop.json("customer", "add", "mill-lane-bakery", "--name", "Mill Lane Bakery", "--street", "4 Mill Lane",
                "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US");
        shop.json("site", "add", "mill-lane", "--customer", "mill-lane-bakery", "--name", "Mill Lane",
                "--store-number", "17", "--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY",
                "--postal-code", "10999", "--country", "US", "--kind", "bakery", "--miles", "3", "--tax-place",
                "alder-county");
        shop.json("machine", "add", "mill-lane", "back-bar", "--model", "Cuber 300", "--where", "back bar", "--make",
                "batch", "--form", "head", "--cooling", "air", "--harvest-rate", "300", "--serial", "ML-77",
                "--connection", "hard-wired");
    }

    @Test
    void entries_addedAndChanged_listedAndShown() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        addMillLane(shop);

        shop.json("customer", "change", "mill-lane-bakery", "--attention", "Accounts", "--from", "2026-07-01");
        shop.json("customer", "change", "mill-lane-bakery", "--payment-days", "14");
        shop.json("site", "change", "mill-lane", "--parking", "rear dock");
        shop.json("site", "change", "mill-lane", "--store-number", "");
        shop.json("machine", "change", "mill-lane", "back-bar", "--condition", "plating worn");

        JsonNode customer = shop.json("customer", "show", "mill-lane-bakery").path("form");
        assertThat(customer.path("paymentDays").asInt()).isEqualTo(14);
        assertThat(customer.path("billTo")).hasSize(2);
        assertThat(customer.path("billTo").get(0).path("until").asString()).isEqualTo("2026-07-01");
        assertThat(customer.path("billTo").get(0).has("attention")).isFalse();
        assertThat(customer.path("billTo").get(1).path("attention").asString()).isEqualTo("Accounts");
        assertThat(customer.path("billTo").get(1).path("address").path("city").asString()).isEqualTo("Alderton");
        JsonNode site = shop.json("site", "show", "mill-lane").path("form");
        assertThat(site.path("parking").asString()).isEqualTo("rear dock");
        assertThat(site.path("miles").asInt()).isEqualTo(3);
        assertThat(site.has("storeNumber")).isFalse();
        assertThat(shop.json("machine", "show", "mill-lane", "back-bar").path("form").path("condition").asString())
                .isEqualTo("plating worn");
        assertThat(shop.json("site", "list", "ALDERTON").path("sites")).hasSize(1);
        assertThat(shop.json("site", "list", "nowhere").path("sites")).isEmpty();
        assertThat(shop.json("machine", "list", "ML-77").path("machines").get(0).path("site").asString())
                .isEqualTo("mill-lane");
        assertThat(shop.run("customer", "list").out()).contains("mill-lane-bakery  Mill Lane Bakery");
    }

    /** A branch of a hotel group that has no bill-to of its own is billed through the group. */
    @Test
    void customer_ofAnAccount_billedThroughIt() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        addMillLane(shop);
        shop.json("customer", "add", "branch", "--name", "Mill Lane Branch", "--parent", "mill-lane-bakery");
        shop.json("site", "change", "mill-lane", "--customer", "branch");
        shop.write("visits/branch.yaml", VISIT);

        assertThat(shop.run("invoice", "draft", shop.folder().resolve("visits/branch.yaml").toString()).out())
                .contains("Mill Lane Bakery");
        assertThat(shop.problems("customer", "change", "mill-lane-bakery", "--parent", "branch").getFirst())
                .contains("would be a parent of itself");
    }

    @Test
    void site_fromAForm_takesCustomerAndMachinesWithIt() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);

        shop.json("import", shop.folder().resolve("sites/hotel-fernhill.yaml").toString());

        assertThat(shop.json("site", "show", "hotel-fernhill").path("form").path("customer").asString())
                .isEqualTo("fernhill-hotels");
        assertThat(shop.json("machine", "list", "hotel-fernhill").path("machines")).isNotEmpty();
        assertThat(shop.run("check").out()).contains("All is well: 1 sites, 0 forms");
        shop.json("site", "change", "hotel-fernhill", "--parking", "x");
        assertThat(shop.json("site", "show", "hotel-fernhill").path("form").path("parking").asString()).isEqualTo("x");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "customer add mill-lane-bakery --name X | already",
            "customer add Mill --name X | the id \"Mill\"",
            "customer add other --name X | \"billTo\" is missing",
            "customer add other --name X --parent mill | the book has no customer \"mill\"",
            "customer change mill-lane-bakry --name X | did you mean \"mill-lane-bakery\"?",
            "customer change mill-lane-bakery --payment-days soon | --payment-days: found the text \"soon\" (a whole number: own terms, in days from 0 to 365)",
            "customer change mill-lane-bakery --country usa | --country: found the text \"usa\"",
            "site add new --name X | who pays is missing",
            "site change mill-lane --tax-place elder-county | no tax rule for \"elder-county\"",
            "site change mill-lane --kind bakry | did you mean \"bakery\"?",
            "site change mill-lane --parking ឧ | our fonts cannot draw",
            "machine add mill-lane cellar --model X | \"harvestRate\" is missing",
            "machine change mill-lane backbar --model X | did you mean \"back-bar\"?",
            "machine show mill-lame back-bar | did you mean \"mill-lane\"?"})
    void entry_wrong_saysWhatAndStoresNothing(String line, String message) {
        Path after = other.resolve("after.json");

        assertThat(unchanged.problems(line.split(" ", -1))).anySatisfy(found -> assertThat(found).contains(message));
        unchanged.json("export", after.toString());
        assertThat(after).hasSameTextualContentAs(common.resolve("before.json"));
    }

    @Test
    void forget_customer_blanksWhatNeedNotBeKeptAndSaysWhatIs() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        addMillLane(shop);
        shop.write("visits/mill.yaml", VISIT);
        shop.json("visit", "add", shop.folder().resolve("visits/mill.yaml").toString());
        assertThat(shop.problems("customer", "forget", "mill-lane-bakery").getFirst())
                .contains("visit \"mill\" is not billed yet", "icequill invoice issue mill");
        shop.json("invoice", "issue", "mill", "--date", "2026-05-14");

        assertThat(shop.problems("customer", "forget", "mill-lane-bakery").getFirst())
                .contains("This blanks customer mill-lane-bakery with 1 sites", "--yes");
        assertThat(shop.json("customer", "show", "mill-lane-bakery").toString()).contains("Mill Lane Bakery");
        JsonNode forgotten = shop.json("customer", "forget", "mill-lane-bakery", "--yes");

        assertThat(forgotten.path("papers").asInt()).isEqualTo(1);
        assertThat(forgotten.path("keptUntil").asString()).isEqualTo("2033-12-31");
        assertThat(forgotten.path("files").get(0).asString()).isEqualTo("visits/mill.yaml");
        shop.json("export", other.resolve("all.json").toString());
        JsonNode all = JsonMapper.shared().readTree(Files.readString(other.resolve("all.json")));
        assertThat(Stream.of("customers", "sites", "visits").map(key -> all.path(key).toString()))
                .noneMatch(text -> text.contains("Mill Lane"));
        assertThat(all.path("papers").toString()).contains("Mill Lane Bakery");
        assertThat(shop.json("find", "Mill", "Lane", "Bakery").path("papers")).hasSize(1);
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(shop.problems("customer", "forget", "mill-lane-bakery").getFirst()).contains("was forgotten on");
        assertThat(shop.problems("price", shop.folder().resolve("visits/mill.yaml").toString()).getFirst())
                .contains("the customer of site mill-lane was forgotten");
    }

    @Test
    void export_papers_amountsSumUpAndTextsAreGuarded() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        addMillLane(shop);
        shop.json("customer", "change", "mill-lane-bakery", "--bill-name", "=HYPERLINK(\"x\")");
        shop.write("visits/mill.yaml", VISIT);
        shop.issue("mill", "2026-05-14");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "Twice.", "--date", "2026-05-15");

        assertThat(shop.json("export", other.resolve("papers.csv").toString()).path("papers").asInt()).isEqualTo(2);

        List<String> lines = Files.readAllLines(other.resolve("papers.csv"), StandardCharsets.UTF_8);
        assertThat(lines.getFirst()).startsWith("number,kind,date,due,customer,store,purchaseOrder,currency,net,tax");
        assertThat(lines.get(1)).startsWith(
                "INV-2026-00001,invoice,2026-05-14,2026-06-13,\"'=HYPERLINK(\"\"x\"\")\",Mill Lane,,USD,150.00,13.31,163.31,");
        assertThat(lines.get(2)).startsWith("CN-2026-00001,credit note,2026-05-15,,").contains(
                ",USD,-150.00,-13.31,-163.31,INV-2026-00001,");
        assertThat(shop.problems("export", other.resolve("papers.csv").toString()).getFirst())
                .contains("the file exists already");
        assertThat(shop.json("export", other.resolve("papers.csv").toString(), "--replace").path("papers").asInt())
                .isEqualTo(2);
    }

    @Test
    void import_listsWithFaults_dryRunNamesEachWithLineAndColumn() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        List<String> lists = lists(shop, """
                customer,name,street,city,region,postalCode,country,paymentDays,parent
                quay,Quay Group,1 Quay,Port Ellery,NY,10971,US,,
                pier,Pier Grill,2 Quay,Port Ellery,NY,10971,usa,soon,
                Dock,Dock Bar,3 Quay,Port Ellery,NY,10971,US,,
                quay,Quay again,1 Quay,Port Ellery,NY,10971,US,,
                shore,Shore Bar,,,,,,,quai
                """, """
                site,customer,name,street,city,region,postalCode,country,kind,miles,taxPlace
                quay-1,quay,Quay 1,1 Quay,Port Ellery,NY,10971,US,bar,far,alder-county
                quay-2,key,Quay 2,1 Quay,Port Ellery,NY,10971,US,bar,7,elder-county
                hotel-fernhill,quay,Fernhill,1 Quay,Port Ellery,NY,10971,US,hotel,7,alder-county
                """, """
                site,machine,model,where,make,form,cooling,harvestRate,connection
                quay-1,bar,Cuber,bar,batch,head,air,500,hard-wired
                quay-9,bar,Cuber,bar,batch,head,air,500,hard-wired
                quay-1,cellar,Cuber,cellar,batched,head,air,-5,hard-wired
                """);

        List<String> problems = shop.problems(with(lists, "--dry-run"));

        assertThat(problems).satisfiesOnlyOnce(text -> assertThat(text).contains("customers.csv:3: country: found"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("customers.csv:3: paymentDays: found"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("customers.csv:4: customer: the id \"Dock\""))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("customers.csv:5: customer: \"quay\" stands here"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("customers.csv:6: parent: neither the book nor",
                        "did you mean \"quay\"?"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("sites.csv:2: miles: found the text \"far\""))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("sites.csv:3: customer: neither the book nor"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("sites.csv:3: taxPlace: no tax rule"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("machines.csv:3: site: neither the book nor"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("machines.csv:4: make: found", "batch"))
                .satisfiesOnlyOnce(text -> assertThat(text).contains("machines.csv:4: harvestRate: found"))
                .hasSize(11);
        assertThat(shop.problems(with(lists))).isEqualTo(problems);
        assertThat(shop.folder().resolve("book")).doesNotExist();
    }

    @Test
    void import_rightLists_allStoredThenChanged() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.SQLITE);
        List<String> lists = lists(shop, """
                customer,name,street,city,region,postalCode,country,parent
                shore,Shore Bar,,,,,,quay
                quay,"Quay ""Group\""","1 Quay; Floor 2",Port Ellery,NY,10971,US,
                """, """
                site,customer,name,street,city,region,postalCode,country,kind,miles,taxPlace
                shore-1,shore,Shore 1,5 Shore,Port Ellery,NY,10971,US,bar,7.5,alder-county
                """, """
                site,machine,model,where,make,form,cooling,harvestRate,connection,serial
                shore-1,bar,Cuber,bar,batch,head,air,500,hard-wired,'=1
                shore-1,cellar,Nugget,cellar,continuous,remote,water,900,hard-wired,S-2
                """);

        JsonNode dry = shop.json(with(lists, "--dry-run"));
        assertThat(shop.folder().resolve("book")).doesNotExist();
        JsonNode done = shop.json(with(lists));
        JsonNode again = shop.json(with(lists));

        assertThat(dry.path("dryRun").asBoolean()).isTrue();
        assertThat(done.path("forms"))
                .extracting(form -> form.path("form").asString() + " " + form.path("id").asString()
                        + " " + form.path("state").asString())
                .containsExactly("customer quay new", "customer shore new", "site shore-1 new");
        assertThat(again.path("forms")).hasSize(3).allMatch(form -> form.path("state").asString().equals("same"));
        assertThat(shop.json("machine", "list").path("machines")).hasSize(2);
        assertThat(shop.json("machine", "show", "shore-1", "bar").path("form").path("serial").asString())
                .isEqualTo("=1");
        assertThat(shop.json("customer", "show", "quay").path("form").path("billTo").get(0).path("address")
                .path("street")).hasSize(2);
        shop.write("visits/shore.yaml", VISIT.replace("mill-lane", "shore-1").replace("back-bar", "cellar"));
        assertThat(shop.run("invoice", "draft", shop.folder().resolve("visits/shore.yaml").toString()).out())
                .contains("Quay \"Group\"");
    }

    private List<String> lists(BookShop shop, String customers, String sites, String machines) throws IOException {
        List<String> line = new ArrayList<>(List.of("import"));
        line.add(shop.write("customers.csv", customers).toString());
        line.add(shop.write("sites.csv", sites).toString());
        line.add(shop.write("machines.csv", machines).toString());
        return line;
    }

    private static String[] with(List<String> line, String... more) {
        return Stream.concat(line.stream(), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void import_nothingGiven_isAProblem() throws IOException {
        Run run = BookShop.empty(other.resolve("shop"), Database.SQLITE).run("import");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("FILE");
    }
}
