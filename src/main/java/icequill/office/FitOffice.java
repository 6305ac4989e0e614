package icequill.office;

import icequill.answer.FitResult;
import icequill.answer.WrittenPaper;
import icequill.document.FitSheet;
import icequill.files.form.RunsReader;
import icequill.forecast.inputs.RecordedRun;
import icequill.ledger.entries.VisitEntry;
import icequill.office.writing.PaperWriter;
import icequill.outlook.FitAssembly;
import icequill.outlook.RecordedRuns;
import icequill.outlook.SideWork;
import icequill.outlook.SiteRecords;
import icequill.party.Shop;
import icequill.party.SiteKinds;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The office that fits how soon dirt stops machines to records. */
public final class FitOffice {

    private final ShopBook book;

    private FitOffice(ShopBook book) {
        this.book = book;
    }

    public static FitOffice of(ShopBook book) {
        return new FitOffice(book);
    }

    /** To the runs of a table. */
    public Validated<FitResult> table(Path file, PaperOptions options) {
        return table(kinds -> RunsReader.read(file, kinds), String.valueOf(file.getFileName()), options);
    }

    /** To the runs of a table that was typed, which bears a name. */
    public Validated<FitResult> typed(String text, String name, PaperOptions options) {
        return table(kinds -> RunsReader.read(text, name, kinds), name, options);
    }

    private Validated<FitResult> table(Function<SiteKinds, Validated<List<RecordedRun>>> read, String name,
            PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        return sound(shop).then(found -> read.apply(shop.siteKinds())
                .map(runs -> new FitAssembly(found, new FitAssembly.InTable(name),
                        new RecordedRuns(runs, shop.forecast(options.date())))))
                .then(assembly -> fitted(assembly, options));
    }

    /** To the visits of the book: each cleaning begins a run, each call for dirt and each cleaning ends one. */
    public Validated<FitResult> book(PaperOptions options) {
        return book.read(StandingVisits::bySite).then(visits -> book.together(held -> {
            ShopFolder shop = BookForms.shop(held);
            List<SiteRecords> sites = visits.entrySet().stream()
                    .flatMap(site -> records(shop, site.getKey(), site.getValue(), options.date()).stream()).toList();
            return sound(shop).then(found -> sites.isEmpty()
                    ? Validated.invalid(StandingVisits.NONE)
                    : Validated.valid(new FitAssembly(found, FitAssembly.InBook.of(sites), new RecordedRuns(
                            sites.stream().flatMap(site -> site.runs().stream()).toList(),
                            shop.forecast(options.date())))));
        })).then(assembly -> fitted(assembly, options));
    }

    private static Optional<SiteRecords> records(ShopFolder shop, String id, List<VisitEntry> visits, LocalDate day) {
        return shop.site(id, Place.NOWHERE).flatMap(site -> shop.forecast(day).flatMap(rates -> shop.schedule()
                .map(schedule -> new SiteRecords(site,
                        visits.stream().flatMap(entry -> shop.contents().visit(BookForms.form(entry)).stream())
                                .toList(),
                        new SideWork(rates.at(site.kind()), schedule), day))))
                .filter(records -> !records.visits().isEmpty());
    }

    /** The shop, or what is wrong with its files. */
    private static Validated<Shop> sound(ShopFolder folder) {
        Problems problems = new Problems();
        problems.addAll(folder.problems());
        return problems.or(() -> folder.shop().orElseThrow());
    }

    private static Validated<FitResult> fitted(FitAssembly assembly, PaperOptions options) {
        return assembly.fits().map(fits -> new FitResult(Optional.empty(), assembly.sheet(options, fits), fits));
    }

    /** Writes the sheet of a fit into papers/, in place of an earlier one. */
    public Validated<FitResult> write(FitResult fit, PaperOptions options) {
        FitSheet sheet = fit.sheet();
        String named = sheet.table().map(name -> name.replaceFirst("[.][A-Za-z]+$", "")).orElse("book");
        return new PaperWriter(book).write(sheet, "fit-" + named, options.extras())
                .map(files -> fit.with(WrittenPaper.of(files, sheet, sheet.table().orElse("book"), List.of())));
    }
}
