package icequill.bench;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Site;
import icequill.pricer.PricedVisit;
import icequill.pricer.Pricer;
import icequill.rates.Rates;
import icequill.render.InvoiceFixture;
import icequill.render.Printer;
import icequill.render.pdf.Html;
import icequill.render.pdf.UntaggedSetter;
import icequill.work.Visit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openpdf.text.Document;
import org.openpdf.text.Font;
import org.openpdf.text.Paragraph;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfWriter;

/**
 * What a price and its invoice take, beside the same texts drawn by hand with the same embedded fonts: what no pipeline can
 * undercut.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class PaperBenchmark {

    private final Rates rates = RatesFixture.rates();
    private final Site site = RatesFixture.site();
    private final Visit visit = twelveLines();
    private final Printer printer = Printer.of(Path.of("no-such-shop"));
    private final Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(12)
            .invoice();
    private final Html html = printer.html(invoice).orElseThrow();
    private final String[] texts = html.text().replaceAll("(?s)<style.*?</style>", "").replaceAll("<[^>]*>", "\n")
            .replaceAll("\n\\s*\n+", "\n").split("\n", -1);
    private final byte[] fontFile = font();

    @Benchmark
    public PricedVisit priceTwelveLines() {
        return Pricer.price(visit, site, rates).orElseThrow();
    }

    @Benchmark
    public String invoiceAsHtml() {
        return printer.html(invoice).orElseThrow().text();
    }

    @Benchmark
    public byte[] invoiceAsPdf() {
        return printer.html(invoice).then(page -> printer.pdf(invoice, page, List.of(), Map.of())).orElseThrow();
    }

    @Benchmark
    public byte[] htmlAsPdf() {
        return printer.pdf(invoice, html, List.of(), Map.of()).orElseThrow();
    }

    @Benchmark
    public byte[] htmlAsUntaggedPdf() throws Exception {
        return UntaggedSetter.set(html);
    }

    @Benchmark
    public byte[] sameTextsDrawnByHand() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document();
        PdfWriter.getInstance(document, bytes);
        document.open();
        BaseFont base = BaseFont.createFont("LiberationSans-Regular.ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false,
                fontFile, null);
        Font font = new Font(base, 9);
        for (String text : texts) {
            document.add(new Paragraph(text, font));
        }
        document.close();
        return bytes.toByteArray();
    }

    private static Visit twelveLines() {
        VisitBuilder builder = VisitBuilder.visit().lead("2026-05-13T16:20", "2026-05-13T18:05").surcharge("handling");
        for (int i = 0; i < 4; i++) {
            builder.material("descaler", "16").material("valve", "1");
        }
        return builder.classDiscount("ten-off").documentDiscount("five-percent").build();
    }

    private static byte[] font() {
        try (InputStream stream = PaperBenchmark.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf")) {
            return Objects.requireNonNull(stream).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
