package icequill.office.care;

import icequill.answer.rates.RaisedPrices;
import icequill.files.disk.Folder;
import icequill.files.disk.SafeFile;
import icequill.files.pricing.PriceRaise;
import icequill.files.pricing.PriceRaise.Change;
import icequill.files.pricing.PriceRaise.Split;
import icequill.files.pricing.RatesFolder;
import icequill.files.pricing.RatesVersion;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The office that raises the prices of the shop's folder. */
public final class RaiseOffice {

    private final ShopBook book;
    private final LocalDate today;

    private RaiseOffice(ShopBook book, LocalDate today) {
        this.book = book;
        this.today = today;
    }

    public static RaiseOffice of(Path folder, Clock clock) {
        return new RaiseOffice(ShopBook.byFolder(folder, clock), ShopDay.today(folder, clock));
    }

    /** Of a shop that is open; it goes by what lies in its folder. */
    public static RaiseOffice of(ShopBook book) {
        return new RaiseOffice(book.byItsFolder(), ShopDay.today(book.folder(), book.clock()));
    }

    /**
     * Raises prices of the folder from a day on.
     *
     * @param sure otherwise nothing is written, and it is told what would be
     */
    public Validated<RaisedPrices> raise(RaiseWish wish, boolean sure) {
        ShopFolder shop = BookForms.shop(book);
        return wish.read().then(groups -> GlyphCheck.report(shop, new Problems()).or(() -> groups))
                .then(groups -> new RatesFolder(book.folder()).version().then(version -> {
                    PriceRaise raise = new PriceRaise(wish.from(), groups, shop.shop().orElseThrow().currency());
                    return raise.of(version).then(files -> readable(version, files))
                            .then(files -> sure ? written(files) : Validated.valid(files))
                            .map(files -> RaisedPrices.of(wish.from(), wish.from().isBefore(today), files,
                                    raise.agreed(version), sure));
                }));
    }

    /** The files, if prices can be read of them: they are laid out elsewhere first, so that the shop's own stay as they are. */
    private Validated<List<Change>> readable(RatesVersion version, List<Change> files) {
        Map<String, byte[]> raised = new TreeMap<>(version.files());
        files.forEach(file -> {
            file.split().ifPresent(split -> raised.put(file.file(), bytes(split.ended())));
            raised.put(file.target(), bytes(file.raised()));
        });
        try {
            Path trial = Files.createTempDirectory("icequill-rates-");
            try {
                return new RatesFolder(trial).write(RatesVersion.of(raised)).then(written -> {
                    Problems problems = new Problems();
                    problems.addAll(BookForms.shop(ShopBook.byFolder(trial, book.clock())).problems());
                    return problems.or(() -> files);
                });
            } finally {
                Folder.delete(trial);
            }
        } catch (IOException failed) {
            return Validated.invalid(new Problem(Code.CANNOT_WRITE, Place.NOWHERE,
                    "the raised prices cannot be tried: " + failed, "a temporary folder that may be written to"));
        }
    }

    /**
     * The old files are ended first: a gap is seen on its first day, and two files of one day stop all pricing. What is raised as it
     * stands comes last: once the day has its own file, the same raise is not done again.
     */
    private Validated<List<Change>> written(List<Change> files) {
        Problems problems = new Problems();
        files.stream().flatMap(file -> file.split().stream()).map(Split::next)
                .forEach(next -> SafeFile.inTheWay(book.folder().resolve(next)).ifPresent(problems::add));
        Validated<List<Change>> written = problems.or(() -> files);
        for (Change file : files) {
            for (Split split : file.split().stream().toList()) {
                written = written.then(done -> write(file.file(), split.ended(), true).map(path -> done));
            }
        }
        for (boolean isSplit : new boolean[]{true, false}) {
            for (Change file : files.stream().filter(each -> each.split().isPresent() == isSplit).toList()) {
                written = written.then(done -> write(file.target(), file.raised(), !isSplit).map(path -> done));
            }
        }
        return written;
    }

    private Validated<Path> write(String name, String text, boolean replace) {
        return SafeFile.write(book.folder().resolve(name), bytes(text), replace);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
