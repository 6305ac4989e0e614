package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import icequill.ledger.Database;
import icequill.ledger.Tampering;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openpdf.text.pdf.PRStream;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNameTree;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfStamper;

/**
 * The electronic bill within an issued PDF is exchanged for another, with the file's hash in the row and all seals reckoned anew: the
 * customer's program would book what nobody was billed. The visit comes to 276.58, and 301.13 with its tax of 8.875 %.
 */
class ExchangedBillAttackTest {

    private static final String NUMBER = "INV-2026-00001";

    @TempDir
    private Path other;

    private Path shop = Path.of("");
    private BookShop books = new BookShop(shop);
    private byte[] issued = {};

    @BeforeEach
    void issue() throws IOException {
        shop = other.resolve("shop");
        books = BookShop.in(shop, Database.SQLITE);
        books.issue("late-call", "2026-05-14");
        issued = Files.readAllBytes(file());
        try (Connections connections = Connections.to(BookPlace.inShop(shop))) {
            connections.writer().useTransaction(handle -> Tampering.unguard(Database.SQLITE, handle));
        }
    }

    @Test
    void anotherBill_isFound() throws IOException {
        assertThat(findings(xml -> xml)).noneMatch(finding -> finding.contains("invoice.xml"));

        assertThat(findings(xml -> xml.replace(">301.13</cbc:TaxInclusiveAmount", ">300.13</cbc:TaxInclusiveAmount")))
                .anyMatch(finding -> finding.contains("invoice.xml in the file of " + NUMBER
                        + " comes to USD 300.13 with USD 301.13 to pay, and the paper to USD 301.13"));
        assertThat(findings(xml -> xml.replace(">301.13</cbc:PayableAmount", ">31.13</cbc:PayableAmount")))
                .anyMatch(finding -> finding.contains("with USD 31.13 to pay, and the paper to USD 301.13"));
        assertThat(findings(xml -> xml.replace("\"USD\"", "\"MXN\"").replace(">USD<", ">MXN<")))
                .anyMatch(finding -> finding.contains("comes to MXN 301.13 with MXN 301.13 to pay"));
        assertThat(findings(xml -> xml.replace("<cbc:IssueDate>2026-05-14", "<cbc:IssueDate>2026-05-15")))
                .anyMatch(finding -> finding.contains("is of 2026-05-15, and the paper of 2026-05-14"));
        assertThat(findings(xml -> xml.replace("</cbc:IssueDate>", "</cbc:IssueDate><cbc:IssueDate/>")))
                .anyMatch(finding -> finding.contains("no electronic bill: IssueDate is said 2 times"));
        assertThat(findings(xml -> xml.replaceFirst("currencyID=\"USD\">301.13", "currencyID=\"MXN\">301.13")))
                .anyMatch(finding -> finding.contains("is in MXN, and the bill in USD"));
        assertThat(findings(xml -> "<!DOCTYPE x [<!ENTITY a SYSTEM 'file:/etc/hostname'>]><x>&a;</x>"))
                .anyMatch(finding -> finding.contains("no electronic bill: "));
    }

    /** What an audit says when the bill was changed so. */
    private List<String> findings(UnaryOperator<String> change) throws IOException {
        byte[] changed = exchanged(change);
        Files.write(file(), changed);
        try (Connections connections = Connections.to(BookPlace.inShop(shop))) {
            connections.writer().useTransaction(handle -> {
                handle.execute("UPDATE paper SET pdf_hash = ?", Hash.of(changed));
                Tampering.reckonAnew(handle, new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "", 2026),
                        1);
            });
        }
        Folder.delete(shop.resolve("papers/issued/.seals"));
        return books.run("audit", "--json").json().path("findings").valueStream().map(BookShop::finding)
                .toList();
    }

    private byte[] exchanged(UnaryOperator<String> change) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfReader reader = new PdfReader(issued)) {
            PdfDictionary embedded = reader.getCatalog().getAsDict(PdfName.NAMES).getAsDict(PdfName.EMBEDDEDFILES);
            for (PdfObject each : PdfNameTree.readTree(embedded).values()) {
                if (PdfReader.getPdfObject(each) instanceof PdfDictionary file
                        && file.getAsString(PdfName.F).toUnicodeString().equals("invoice.xml")
                        && PdfReader.getPdfObject(file.getAsDict(PdfName.EF).get(PdfName.F)) instanceof PRStream xml) {
                    String text = new String(PdfReader.getStreamBytes(xml), StandardCharsets.UTF_8);
                    xml.setData(change.apply(text).getBytes(StandardCharsets.UTF_8));
                }
            }
            new PdfStamper(reader, out).close();
        }
        return out.toByteArray();
    }

    private Path file() {
        return shop.resolve("papers/issued/INV-2026/" + NUMBER + ".pdf");
    }
}
