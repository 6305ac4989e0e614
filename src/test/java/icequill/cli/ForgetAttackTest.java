package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** After a customer is forgotten, every file of the shop that still names him is looked for by other means. */
class ForgetAttackTest {

    private static final List<String> KEPT = List.of("papers/issued/", "book/", "pricing/");

    @TempDir
    Path other;

    @Test
    void everyFileThatStillNamesHim_isTold() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        for (String visit : List.of("late-call", "valve-repair-taproom", "callback-taproom")) {
            shop.issue(visit, "2026-06-14");
        }
        shop.json("invoice", "draft", shop.folder().resolve("visits/late-call.yaml").toString(), "--html");
        shop.json("visit", "record", shop.folder().resolve("visits/valve-repair-taproom.yaml").toString());
        shop.json("export", shop.folder().resolve("exports/all.json").toString());
        shop.json("backup", shop.folder().resolve("copies/monday.backup").toString());
        shop.write("notes/call them.txt", "Ring Pennon Wharf Brewing about the taproom.\n");
        shop.write("accounts/wharf.yaml", "# for pennon wharf brewing\n");

        JsonNode forgotten = shop.json("customer", "forget", "pennon-wharf-taproom", "--yes");

        List<String> told = new ArrayList<>();
        forgotten.path("files").forEach(file -> told.add(file.asString()));
        assertThat(told).containsAll(naming(shop.folder())).contains("papers/draft-late-call.pdf",
                "papers/draft-late-call.html", "copies/monday.backup", "exports/all.json", "notes/call them.txt",
                "accounts/wharf.yaml", "sites/pennon-wharf-taproom.yaml", "visits/late-call.yaml");
        assertThat(told).noneMatch(file -> file.contains("hotel") || file.contains("mercado") || file.contains("bakery")
                || file.startsWith("papers/issued"));
    }

    /** Whom to turn to, at the customer's and at his sites. */
    @Test
    void filesThatNameHisContacts_areTold() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        shop.json("customer", "add", "mill", "--name", "Mill Lane Bakery", "--street", "4 Mill Lane", "--city",
                "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US", "--contacts",
                "Ana Ruiz | for: bills; Office");
        shop.json("site", "add", "mill-lane", "--customer", "mill", "--name", "Mill Lane", "--street", "4 Mill Lane",
                "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US", "--kind", "bakery",
                "--miles", "3", "--contacts", "Bo Hart | telephone: 607-555-0151");
        shop.write("notes/ana.txt", "Ring Ana Ruiz.\n");
        shop.write("notes/bo.txt", "Bo Hart has the key.\n");
        shop.write("notes/office.txt", "The office needs paper.\n");

        JsonNode files = shop.json("customer", "forget", "mill", "--yes").path("files");

        assertThat(files).map(JsonNode::asString).containsExactly("notes/ana.txt", "notes/bo.txt");
    }

    private static List<String> naming(Path shop) throws IOException {
        try (Stream<Path> files = Files.walk(shop)) {
            return files.filter(Files::isRegularFile).filter(ForgetAttackTest::names)
                    .map(file -> shop.relativize(file).toString())
                    .filter(name -> KEPT.stream().noneMatch(name::startsWith)).toList();
        }
    }

    private static boolean names(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
            return text.contains("pennon wharf") || text.contains("pennon-wharf");
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
