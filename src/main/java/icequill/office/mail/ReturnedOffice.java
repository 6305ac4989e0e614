package icequill.office.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailList;
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

    /**
     * Notes of which mails the files say that they came back. A file that says nothing new does not hold up the others.
     *
     * @param place one file, or a folder whose {@code .eml} files are read
     */
    public Validated<MailList> read(Path place) {
        return files(place).then(files -> book.write(open -> {
            Map<String, String> known = MailLife.all(open, true).stream()
                    .collect(Collectors.toMap(MailLife::messageId, MailLife::id, (one, same) -> one));
            Problems problems = new Problems();
            List<MailEntry> returned = new ArrayList<>();
            MailOffice office = MailOffice.of(book);
            files.forEach(file -> problems
                    .take(ReturnedMail.read(file, known::containsKey).then(ReturnedOffice::failed)
                            .then(back -> MailLife.of(open, known.getOrDefault(back.messageId(), ""))
                                    .then(mail -> office.step(open, mail,
                                            new MailEvent.Bounce(new MailDesk(book).now(), why(back))))))
                    .ifPresent(mail -> returned.add(office.entry(open, mail))));
            return Validated.valid(new MailList(returned, problems.list()));
        }));
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
