package icequill.shop;

import icequill.files.form.BookSettings;
import icequill.files.form.DatabasePassword;
import icequill.ledger.Book;
import icequill.ledger.Opening;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.Author;
import icequill.ledger.store.BookPlace;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.Printer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One shop folder with its book, for one command. Settings and rates are read once. The book is opened anew for each call, so that
 * nobody else is kept from it, and nothing of a database is loaded before it is known that there is a book.
 *
 * @param rates read at most once
 * @param clock by which the moment of issuing is noted
 * @param held open for many calls in a row
 * @param open the transaction that all belongs to which is done with it
 * @param given files of forms that come before those of the book, and are stored nowhere
 */
public record ShopBook(Path folder, BookSettings settings, RatesOnce rates, Clock clock,
        Optional<Book> held, Optional<Transaction> open, List<Path> given) {

    public ShopBook {
        given = List.copyOf(given);
    }

    /** As shop.yaml sets it. */
    public static ShopBook of(Path folder, Clock clock) {
        return new ShopBook(folder, BookSettings.of(folder), RatesOnce.inForce(), clock, Optional.empty(),
                Optional.empty(), List.of());
    }

    /** The same by the rates and templates of its folder, whatever is in force. */
    public static ShopBook byFolder(Path folder, Clock clock) {
        return of(folder, clock).byItsFolder();
    }

    /** The same by the rates and templates of its folder, whatever is in force. */
    public ShopBook byItsFolder() {
        return new ShopBook(folder, settings, RatesOnce.ofFolder(), clock, held, open, given);
    }

    /** By what it prices and prints. */
    public RatesInUse ratesInUse() {
        return rates.of(this::found);
    }

    private RatesInUse found() {
        return isShared() && !rates.isOfFolder()
                ? RatesInUse.shared(folder, read(RatesInUse::inForce))
                : RatesInUse.of(folder, isShared());
    }

    /** Prints by that. */
    public Printer printer() {
        return rates.printer(this::found);
    }

    /**
     * The same shop by an earlier version of its rates, for looking back.
     *
     * @return empty where the book has no files of it
     */
    public Validated<Optional<ShopBook>> by(String version) {
        return read(open -> Validated.valid(open.rates().version(version)))
                .then(found -> found.map(then -> RatesInUse.earlier(then, folder)
                        .map(use -> Optional
                                .of(new ShopBook(folder, settings, RatesOnce.known(use), clock, held, open,
                                        given))))
                        .orElseGet(() -> Validated.valid(Optional.empty())));
    }

    /** Whether offices share the book. */
    public boolean isShared() {
        return settings.database().isPresent();
    }

    /** The same with forms that are laid over the book for a while. */
    public ShopBook with(List<Path> forms) {
        return new ShopBook(folder, settings, rates, clock, held, open, forms);
    }

    /** A server is taken to have one; so is a folder that has issued papers, though the database may be gone. */
    public boolean exists() {
        return place().isBegun();
    }

    public BookPlace place() {
        return (address() instanceof Validated.Valid<Optional<String>>(Optional<String> whole)
                ? whole
                : settings.database())
                .<BookPlace>map(url -> new BookPlace.OnServer(url, BookPlace.papersIn(folder)))
                .orElseGet(() -> BookPlace.inShop(folder));
    }

    /** Whose papers lie in this folder, where the book is shared. */
    public Optional<String> office() {
        return settings.database().map(server -> settings.office().orElse(""));
    }

    /** That of a kind and year, with the letters that it begins with. */
    public Series series(PaperKind kind, int year) {
        return new SeriesLetters(settings).series(kind, year);
    }

    /** By whom it is changed. */
    public Author author() {
        return Author.ofSystem(settings.office().orElse(""));
    }

    /** Changes the book, which is made when there is none. */
    public <T> Validated<T> write(Function<Transaction, Validated<T>> work) {
        return open.map(work)
                .orElseGet(() -> held.map(book -> book.write(work)).orElseGet(() -> made(book -> book.write(work))));
    }

    /** The same shop with its book held open. */
    ShopBook holding(Book book) {
        return new ShopBook(folder, settings, rates, clock, Optional.of(book), open, given);
    }

    /**
     * Does the work of a form that a page sent, once: sent again, it gives the same answer and does nothing. All of the work is one
     * transaction with the memory of it.
     *
     * @param key of the form
     * @param content a hash of all that it says
     * @param work gives what it came to
     */
    public Validated<String> once(String key, String content, Function<ShopBook, Validated<String>> work) {
        return write(transaction -> transaction.sentForms().answer(key, content).then(before -> before
                .map(Validated::valid).orElseGet(() -> work.apply(within(transaction)).map(answer -> {
                    transaction.sentForms().remember(key, content, answer);
                    return answer;
                }))));
    }

    /** Does many things in one transaction: all of them, or none. */
    public <T> Validated<T> atOnce(Function<ShopBook, Validated<T>> work) {
        return write(transaction -> work.apply(within(transaction)));
    }

    /** The same shop, all that is done with whose book belongs to a transaction. */
    public ShopBook within(Transaction transaction) {
        return new ShopBook(folder, settings, rates, clock, held, Optional.of(transaction), given);
    }

    /** Does many things in a row with the book, which is made when there is none, without opening it for each. */
    public <T> Validated<T> together(Function<ShopBook, Validated<T>> work) {
        return held.isPresent() || open.isPresent()
                ? work.apply(this)
                : made(book -> work.apply(holding(book)));
    }

    /** Looks at the book many times in a row without opening it for each; that there is none is a problem. */
    public <T> Validated<T> looking(Function<ShopBook, Validated<T>> work) {
        return held.isPresent() || open.isPresent()
                ? work.apply(this)
                : look(book -> work.apply(holding(book)));
    }

    /** What comes of each of many, in their order: beside each other, unless all belongs to one transaction. */
    public <I, T> List<T> each(List<I> many, Function<I, T> work) {
        return (open.isPresent() ? many.stream() : many.parallelStream()).map(work).toList();
    }

    private <T> Validated<T> made(Function<Book, Validated<T>> work) {
        return inShop().then(place -> Opening.open(place, clock, author())).then(book -> closing(book, work));
    }

    private static <T> Validated<T> closing(Book book, Function<Book, Validated<T>> work) {
        try (book) {
            return work.apply(book);
        }
    }

    /** Looks at the book; that there is none is a problem. */
    public <T> Validated<T> read(Function<Reading, Validated<T>> work) {
        return open.map(work).orElseGet(() -> look(book -> book.read(work)));
    }

    /** Does something with the book itself; that there is none is a problem. */
    public <T> Validated<T> look(Function<Book, Validated<T>> work) {
        return held.map(work).orElseGet(() -> there().then(book -> closing(book, work)));
    }

    private Validated<Book> there() {
        return inShop().then(place -> exists()
                ? Opening.open(place, clock, author())
                : Validated.invalid(new Problem(Code.MISSING, Place.ofFile(place.text()), "there is no book yet",
                        "it begins with: icequill import FILE, or icequill customer add")));
    }

    private Validated<BookPlace> inShop() {
        return rightlyNamed().then(shop -> valid());
    }

    private Validated<Boolean> rightlyNamed() {
        Problems problems = new Problems();
        if (Files.exists(folder.resolve("shop.yaml"))) {
            problems.addAll(BookSettings.problems(folder));
            problems.addAll(new SeriesLetters(settings).problems());
        }
        return problems.or(() -> true);
    }

    private Validated<BookPlace> valid() {
        return Files.exists(folder.resolve("shop.yaml"))
                ? address().map(url -> place())
                : Validated.invalid(new Problem(Code.MISSING, Place.ofFile(folder.resolve("shop.yaml").toString()),
                        "there is no shop here", "--shop with a shop folder, as made by: icequill new DIR"));
    }

    private Validated<Optional<String>> address() {
        return DatabasePassword.address(settings, folder);
    }
}
