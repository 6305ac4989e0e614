package icequill.ledger;

import icequill.OwnProcess;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Pdf;
import icequill.ledger.store.Author;
import icequill.ledger.store.BookContext;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.LockWait;
import icequill.ledger.store.Step;
import icequill.problem.Code;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A process of its own that works in a book; it may be stopped at any moment. */
public final class BookChild {

    /** How it ends when it found the book in use. */
    public static final int IN_USE = 8;

    private static final int HALTED = 7;

    private BookChild() {
    }

    /** Starts one; its output is what it tells, its input what it waits for. */
    public static Process start(BookPlace place, String... work) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(text(place), place.papers().toString()));
        arguments.addAll(List.of(work));
        return new ProcessBuilder(OwnProcess.java(List.of(), BookChild.class, arguments))
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    /** Where the database of a place is, to be read again by {@link #place}. */
    static String text(BookPlace place) {
        return switch (place) {
        case BookPlace.InFile(Path database, Path papers) -> database.toString();
        case BookPlace.OnServer(String url, Path papers) -> url;
        };
    }

    static BookPlace place(String database, String papers) {
        return database.startsWith("jdbc:")
                ? new BookPlace.OnServer(database, Path.of(papers))
                : new BookPlace.InFile(Path.of(database), Path.of(papers));
    }

    public static void main(String[] args) throws IOException {
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> {
            fault.printStackTrace();
            System.exit(1);
        });
        BookPlace place = place(args[0], args[1]);
        switch (args[2]) {
        case "halt" -> halt(place, Step.valueOf(args[3]), Integer.parseInt(args[4]));
        case "issue" -> issue(place, Integer.parseInt(args[3]));
        case "change" -> change(place, Step.valueOf(args[3]));
        case "add" -> add(place, args[3], Integer.parseInt(args[4]));
        case "hold" -> hold(place);
        case "restore" -> restore(place, Path.of(args[3]), Integer.parseInt(args[4]));
        case "backup" -> backup(place, Path.of(args[3]), Integer.parseInt(args[4]));
        case "work" -> KillRuns.work(List.of(args).subList(3, args.length));
        case "restoring" -> KillRuns.restore(Path.of(args[3]), List.of(args).subList(4, args.length));
        case "impatient" -> impatient(place);
        default -> throw new IllegalArgumentException(args[2]);
        }
    }

    /** Issues two papers in one transaction, and halts when a step comes for the n-th time. */
    private static void halt(BookPlace place, Step step, int times) {
        Map<Step, Integer> came = new EnumMap<>(Step.class);
        Consumer<Step> watcher = at -> {
            if (came.merge(at, 1, Integer::sum) == times && at == step) {
                Runtime.getRuntime().halt(HALTED);
            }
        };
        try (Book book = Opening.open(place, new BookContext(Books.CLOCK, LockWait.USUAL, Books.AUTHOR, watcher))
                .orElseThrow()) {
            book.write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE,
                    numbered -> Validated.valid(Books.printed(numbered, 11)))
                    .then(first -> transaction.issue(Books.INVOICES, Origin.NONE,
                            numbered -> Validated.valid(Books.printed(numbered, 12)))))
                    .orElseThrow();
        }
    }

    /** Gives the group forty-five days to pay, and halts at a step. */
    private static void change(BookPlace place, Step step) {
        Consumer<Step> watcher = at -> {
            if (at == step) {
                Runtime.getRuntime().halt(HALTED);
            }
        };
        try (Book book = Opening
                .open(place, new BookContext(Books.CLOCK, LockWait.USUAL, Books.AUTHOR, watcher)).orElseThrow()) {
            book.write(transaction -> transaction.register().change(Entered.group(45))).orElseThrow();
        }
    }

    /** Adds customers, one transaction each. */
    private static void add(BookPlace place, String name, int count) {
        try (Book book = Opening.open(place, Books.CLOCK, new Author(name, "")).orElseThrow()) {
            for (int i = 0; i < count; i++) {
                CustomerEntry customer = CustomerEntry.named(name + "-" + i, name + " " + i);
                book.write(transaction -> transaction.register().add(customer)).orElseThrow();
            }
        }
    }

    /** Issues papers, and tells the number of each when it is issued. */
    private static void issue(BookPlace place, int count) {
        try (Book book = Books.open(place)) {
            for (int i = 0; i < count; i++) {
                System.out.println(Books.issue(book, i).orElseThrow().number());
            }
        }
    }

    /** Writes in the book until it is told a line. */
    private static void hold(BookPlace place) throws IOException {
        try (Book book = Books.open(place);
                BufferedReader told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            book.write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE, numbered -> {
                System.out.println("holding");
                try {
                    told.readLine();
                } catch (IOException closed) {
                    throw new IllegalStateException(closed);
                }
                return Validated.valid(Books.printed(numbered, 1));
            })).orElseThrow();
        }
    }

    private static void backup(BookPlace place, Path file, int papers) {
        try (Book book = Books.open(place)) {
            book.backup(file, halting(papers), Optional.empty(), Books.UNHEARD).orElseThrow();
        }
    }

    private static void restore(BookPlace place, Path file, int papers) {
        Book.restore(file, place, halting(papers), Books.UNHEARD).orElseThrow();
    }

    /** Halts when so many papers were read. */
    private static PaperReader halting(int papers) {
        int[] read = {0};
        return new PaperReader() {
            @Override
            public Validated<Read> read(String json) {
                read[0]++;
                if (read[0] == papers) {
                    Runtime.getRuntime().halt(HALTED);
                }
                return Books.READER.read(json);
            }

            @Override
            public Validated<Carried> carried(Pdf pdf) {
                return Books.READER.carried(pdf);
            }

            @Override
            public boolean prints(Pdf pdf, String text) {
                return Books.READER.prints(pdf, text);
            }
        };
    }

    /** Tries to issue without waiting. */
    private static void impatient(BookPlace place) {
        try (Book book = Opening.open(place, Books.CLOCK, Books.AUTHOR, LockWait.of(Duration.ZERO)).orElseThrow()) {
            System.exit(Books.issue(book, 1).problems().stream().anyMatch(found -> found.code() == Code.BOOK_IN_USE)
                    ? IN_USE
                    : 0);
        }
    }
}
