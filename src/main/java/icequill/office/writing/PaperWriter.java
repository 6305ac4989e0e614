package icequill.office.writing;

import icequill.document.Attachment;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.files.disk.SafeFile;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.pdf.Html;
import icequill.render.pdf.Imprint;
import icequill.request.Extras;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Prints papers and lays them into the shop folder's papers/. */
public final class PaperWriter {

    private final ShopBook shop;
    private final Path papers;

    /** Prints by what is in force in the shop, which is not looked for before the first paper. */
    public PaperWriter(ShopBook shop) {
        this.shop = shop;
        this.papers = shop.folder().resolve("papers");
    }

    /**
     * Writes a paper; everything is printed before anything is written. It replaces an earlier print of itself. Where a paper of
     * another kind, date or language lies under its name, date and language are added to the name of the new one.
     *
     * @param name of its files, without the ending
     * @return the files, the PDF first
     */
    public Validated<List<Path>> write(Paper paper, String name, Extras extras) {
        return finished(paper).then(valid -> printed(paper, name, extras)).then(files -> {
            String longer = named(name, paper, Objects.requireNonNull(files.get(name + ".pdf")));
            if (longer.equals(name)) {
                return written(files, true);
            }
            Map<String, byte[]> renamed = new LinkedHashMap<>();
            files.forEach((file, bytes) -> renamed.put(longer + file.substring(name.length()), bytes));
            return written(renamed, isFree(longer, Objects.requireNonNull(renamed.get(longer + ".pdf"))));
        });
    }

    /** The name of a paper's files where a paper of another kind, date or language lies under its own. */
    public static String longer(String name, Paper paper) {
        return name + "-" + paper.date() + "-" + paper.language().tag();
    }

    /** The paper, unless it goes out and something on it is still as it came with the program. */
    Validated<Paper> finished(Paper paper) {
        return shop.printer().html(paper)
                .then(html -> ShippedValues.problems(shop.ratesInUse().folder(), paper, html).or(() -> paper));
    }

    /** The name of a paper's files as they would be written: its own, or the longer one. */
    public String named(String name, Paper paper, byte[] pdf) {
        return isFree(name, pdf) ? name : longer(name, paper);
    }

    /** Whether nothing lies there, or the same paper as it was printed before. */
    private boolean isFree(String name, byte[] printed) {
        Path pdf = papers.resolve(name + ".pdf");
        if (!Files.exists(pdf)) {
            return true;
        }
        try {
            Optional<Imprint> there = Imprint.of(Files.readAllBytes(pdf));
            return there.isPresent() && there.equals(Imprint.of(printed));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private Validated<Map<String, byte[]>> printed(Paper paper, String name, Extras extras) {
        return printed(paper, name, extras, Map.of());
    }

    /**
     * The files of a paper, the PDF first.
     *
     * @param marks what the book says of a paper that it numbered; its data are then in the file too
     */
    public Validated<Map<String, byte[]>> printed(Paper paper, String name, Extras extras, Map<String, String> marks) {
        Validated<List<Attachment>> enclosed = extras.bare()
                ? Validated.valid(List.of())
                : marks.isEmpty() ? PaperAttachments.of(paper) : PaperAttachments.withData(paper);
        return enclosed.then(attachments -> shop.printer().html(paper)
                .then(html -> shop.printer().pdf(paper, html, attachments, marks).then(pdf -> {
                    Map<String, byte[]> files = new LinkedHashMap<>();
                    files.put(name + ".pdf", pdf);
                    if (extras.html()) {
                        files.put(name + ".html", bytes(html));
                    }
                    return extras.xml() ? withXml(paper, name, files) : Validated.valid(files);
                })));
    }

    private static Validated<Map<String, byte[]>> withXml(Paper paper, String name, Map<String, byte[]> files) {
        if (paper instanceof MaintenanceQuote) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "a maintenance quote leaves the choice between plans to the customer, and UBL has no document with choices",
                    "leave out --xml; its data is in the PDF as paper.json"));
        }
        if (!(paper instanceof PricedPaper priced)) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "there is no XML for this kind of paper, only for invoices, credit notes and repair quotes",
                    "leave out --xml; its data is in the PDF as paper.json"));
        }
        if (priced.isDraft()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "only a numbered invoice, credit note or quote can be written as XML", "issue it first"));
        }
        return PaperAttachments.ubl(priced).map(xml -> {
            files.put(name + ".xml", xml);
            return files;
        });
    }

    /** Writes files into papers/, the first of which is given back first. */
    public Validated<List<Path>> written(Map<String, byte[]> files, boolean replace) {
        Problems inTheWay = new Problems();
        files.keySet().stream().map(papers::resolve).filter(target -> !replace || Files.isDirectory(target))
                .forEach(target -> SafeFile.inTheWay(target).ifPresent(inTheWay::add));
        Validated<List<Path>> paths = inTheWay.or(List::<Path>of);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            paths = paths.then(before -> SafeFile.write(papers.resolve(file.getKey()), file.getValue(), replace)
                    .map(path -> Stream.concat(before.stream(), Stream.of(path))
                            .toList()));
        }
        return paths;
    }

    private static byte[] bytes(Html html) {
        return html.text().getBytes(StandardCharsets.UTF_8);
    }
}
