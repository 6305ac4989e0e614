package icequill.office.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailList;
import icequill.files.disk.Hash;
import icequill.files.form.MailSettings;
import icequill.ledger.Transaction;
import icequill.life.mail.MailEvent;
import icequill.mail.Returned;
import icequill.mail.Returned.Action;
import icequill.mail.Returned.Failed;
import icequill.mail.ReturnedMail;
import icequill.office.writing.MailDesk;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The office that reads what mail servers sent back. */
public final class ReturnedOffice {

    private static final String END = ".eml";

    private final ShopBook book;

    private ReturnedOffice(ShopBook book) {
        this.book = book;
    }

    public static ReturnedOffice of(ShopBook book) {
        return new ReturnedOffice(book);
    }

    /** The folder into which somebody saves what mail servers sent back, as shop.yaml has it; empty where none is set. */
    public Optional<String> folder() {
        return MailSettings.of(book.folder()).returned();
    }

    /** Mails that came back, of which somebody has to look after. */
    public Validated<MailList> returned() {
        return MailOffice.of(book).mails(false, Optional.empty()).map(all -> new MailList(all.mails().stream()
                .filter(mail -> mail.state() == MailEntry.State.RETURNED).toList(), List.of()));
    }

    /** Reads that folder. */
    public Validated<MailList> readFolder() {
        return folder().map(folder -> read(book.folder().resolve(folder)))
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, new Place("shop.yaml", 0, "mail.returned"),
                        "no folder is set into which mails that came back are saved",
                        "the name of one, such as: returned")));
    }

    /**
     * Notes of which mails the files say that they came back.
     *
     * @param place one file, or a folder whose {@code .eml} files are read
     */
    public Validated<MailList> read(Path place) {
        return files(place).then(this::read);
    }

    /** The same of several files. One that says nothing new does not hold up the others, and one that was read before says nothing. */
    public Validated<MailList> read(List<Path> files) {
        return book.write(open -> {
            Map<String, MailLife> known = MailLife.all(open, true).stream()
                    .collect(Collectors.toMap(MailLife::messageId, mail -> mail, (one, same) -> one));
            Problems problems = new Problems();
            List<MailEntry> returned = new ArrayList<>();
            files.forEach(file -> problems.take(noted(open, file, known)).flatMap(found -> found)
                    .ifPresent(mail -> returned.add(MailOffice.of(book).entry(open, mail))));
            return Validated.valid(new MailList(returned, problems.list()));
        });
    }

    /** The mail that came back by a file; empty where that is known by the same. */
    private Validated<Optional<MailLife>> noted(Transaction open, Path file, Map<String, MailLife> known) {
        return ReturnedMail.read(file, known::containsKey).then(ReturnedOffice::failed).then(back -> {
            MailLife mail = Objects.requireNonNull(known.get(back.messageId()));
            return hash(file).then(report -> mail.reports().contains(report)
                    ? Validated.valid(Optional.empty())
                    : MailLife.of(open, mail.id()).then(now -> MailOffice.of(book).step(open, now,
                            new MailEvent.Bounce(new MailDesk(book).now(), why(back), Optional.of(report))))
                            .map(Optional::of));
        });
    }

    private static Validated<String> hash(Path file) {
        try {
            return Validated.valid(Hash.of(Files.readAllBytes(file)));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(file.toString()),
                    "the file cannot be read", "a file that you may read"));
        }
    }

    private static Validated<List<Path>> files(Path place) {
        if (!Files.isDirectory(place)) {
            return Validated.valid(List.of(place));
        }
        try (Stream<Path> files = Files.list(place)) {
            return Validated.valid(files.filter(file -> file.toString().endsWith(END)).sorted().toList());
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(place.toString()),
                    "the folder cannot be read", "a folder that you may read"));
        }
    }

    /** A server that only tries on has returned nothing. */
    private static Validated<Returned> failed(Returned report) {
        return report.failed().isEmpty() || report.failed().stream().anyMatch(one -> one.action() == Action.FAILED)
                ? Validated.valid(report)
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, new Place(report.messageId(), 0, ""),
                        "the mail did not come back: a server says that it is delayed or delivered",
                        "nothing; a report that it failed"));
    }

    private static String why(Returned report) {
        return report.failed().stream().filter(one -> one.action() == Action.FAILED).map(ReturnedOffice::said)
                .collect(Collectors.joining("; "));
    }

    private static String said(Failed one) {
        return Stream.of(one.address(), one.status(), one.diagnostic()).filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
