package icequill.office.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailList;
import icequill.explain.ConstantKey;
import icequill.files.form.MailSettings;
import icequill.ledger.Transaction;
import icequill.life.mail.MailEvent;
import icequill.life.mail.MailState;
import icequill.mail.EmlDraft;
import icequill.mail.MailMessage;
import icequill.mail.MailServer;
import icequill.mail.Outgoing;
import icequill.mail.Submission;
import icequill.mail.Why;
import icequill.office.letters.WrittenMail;
import icequill.office.writing.MailDesk;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The office that sends mails. That one begins to go out is noted before the server hears of it, and what came of it afterwards: whatever
 * happens in between, nobody sends it again unasked.
 */
public final class SendingOffice {

    private static final String OUTBOX = "outbox";

    private final ShopBook book;
    private final MailSettings settings;
    private final Pace pace;

    private SendingOffice(ShopBook book, Pace pace) {
        this.book = book;
        this.settings = MailSettings.of(book.folder());
        this.pace = pace;
    }

    public static SendingOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static SendingOffice of(ShopBook book) {
        return new SendingOffice(book, Pace.of(MailSettings.of(book.folder()).perMinute()));
    }

    /** Ids of the mails that may be sent now, in the order in which they were written. */
    public Validated<List<String>> due() {
        return due(mail -> true);
    }

    /** Those of them that the office sends while it is open, without being asked; none where no server is set. */
    public Validated<List<String>> dueByItself() {
        return settings.server().isEmpty() ? Validated.valid(List.of()) : switch (settings.byItself()) {
        case NOTHING -> Validated.valid(List.of());
        case RETRIES -> due(mail -> mail.state() instanceof MailState.Waiting waiting && waiting.tries() > 0);
        case EVERYTHING -> due();
        };
    }

    private Validated<List<String>> due(Predicate<MailLife> which) {
        return book.read(open -> Validated.valid(MailLife.all(open, false).stream()
                .filter(mail -> mail.state().isDue(desk(book).now())).filter(which)
                .sorted(Comparator.comparing((MailLife mail) -> mail.state().since())
                        .thenComparing(MailLife::id))
                .map(MailLife::id).toList()));
    }

    private static MailDesk desk(ShopBook book) {
        return new MailDesk(book);
    }

    /**
     * Sends mails, one after the other; where no server is set, lays each into the folder outbox. What cannot be written or sent does not
     * hold up the rest.
     *
     * @param ids of mails that wait
     * @param along is told where each stands then, and says whether to go on
     * @return those that were tried, and why others were not
     */
    public Validated<MailList> send(List<String> ids, Predicate<MailEntry> along) {
        return book.together(held -> settings.server(book.folder()).then(server -> server
                .map(found -> sent(held, found, ids, along))
                .orElseGet(() -> Validated.valid(each(held, ids, along, mail -> drafted(held, mail))))));
    }

    private Validated<MailList> sent(ShopBook held, MailServer server, List<String> ids, Predicate<MailEntry> along) {
        return Outgoing.to(server).map(outgoing -> {
            try (outgoing) {
                return each(held, ids, along, mail -> sent(held, mail, outgoing));
            }
        });
    }

    /** What comes of one mail, and whether the next may be tried. */
    private record Outcome(Validated<MailLife> mail, boolean goesOn) {}

    private MailList each(ShopBook held, List<String> ids, Predicate<MailEntry> along,
            Function<String, Outcome> work) {
        Problems problems = new Problems();
        List<MailEntry> done = new ArrayList<>();
        for (String id : ids) {
            Outcome outcome = work.apply(id);
            outcome.mail().problems().stream().map(problem -> of(id, problem)).forEach(problems::add);
            Optional<MailEntry> entry = outcome.mail().found()
                    .flatMap(mail -> held.read(open -> Validated.valid(MailOffice.of(held).entry(open, mail))).found());
            entry.ifPresent(done::add);
            if (!outcome.goesOn() || !entry.map(along::test).orElse(true)) {
                break;
            }
        }
        return new MailList(done, problems.list());
    }

    private static Problem of(String id, Problem problem) {
        return problem.place().file().isEmpty()
                ? new Problem(problem.code(), new Place(id, 0, problem.place().path()), problem.message(),
                        problem.allowed())
                : problem;
    }

    private Outcome drafted(ShopBook held, String id) {
        return new Outcome(held.write(open -> written(held, open, id).then(mail -> {
            String name = OUTBOX + "/" + id + ".eml";
            return EmlDraft.write(mail.written().message(), book.folder().resolve(OUTBOX), id)
                    .then(file -> step(held, open, mail, new MailEvent.Draft(desk(held).now(), name)));
        })), true);
    }

    private Outcome sent(ShopBook held, String id, Outgoing outgoing) {
        pace.await();
        Validated<MailMessage> begun = held.write(open -> written(held, open, id).then(mail -> step(held, open, mail,
                new MailEvent.Attempt(desk(held).now())).map(noted -> mail.written().message())));
        if (begun.found().isEmpty()) {
            return new Outcome(new Validated.Invalid<>(begun.problems()), true);
        }
        Submission submission = outgoing.send(begun.orElseThrow());
        Validated<MailLife> after = held.write(open -> MailLife.of(open, id).then(mail -> MailOffice.of(held)
                .step(open, mail, event(submission, held))));
        return submission instanceof Submission.Unusable(Why why, String answer)
                ? new Outcome(unusable(why, answer), false)
                : new Outcome(after, true);
    }

    private static <T> Validated<T> unusable(Why why, String answer) {
        return Validated.invalid(new Problem(Code.CANNOT_WRITE, new Place("shop.yaml", 0, "mail.server"),
                "the mail server cannot be used: " + said(why, answer),
                "a server, user and password that go together, then: icequill mail send"));
    }

    private static MailEvent event(Submission submission, ShopBook book) {
        Instant now = desk(book).now();
        return switch (submission) {
        case Submission.Taken taken -> new MailEvent.Acceptance(now, taken.answer());
        case Submission.PutOff later -> new MailEvent.Postponement(now, said(later.why(), later.answer()));
        case Submission.Unusable none -> new MailEvent.Postponement(now, said(none.why(), none.answer()));
        case Submission.Refused no -> new MailEvent.Rejection(now,
                no.address().map(address -> address + ": ").orElse("") + said(no.why(), no.answer()));
        case Submission.Unknown lost -> new MailEvent.Silence(now, said(lost.why(), ""));
        };
    }

    /** What the server said; where it said nothing, what happened. */
    private static String said(Why why, String answer) {
        return answer.isEmpty() ? ConstantKey.words(why.name()) : answer;
    }

    /** A mail that may go out, as it is written now. */
    private record Ready(MailLife life, WrittenMail written) {}

    private Validated<Ready> written(ShopBook held, Transaction open, String id) {
        return MailLife.of(open, id).then(mail -> MailState
                .step(mail.state(), new MailEvent.Attempt(desk(held).now()))
                .then(free -> MailOffice.of(held.within(open)).assembly().of(open, mail))
                .map(written -> new Ready(mail, written)));
    }

    private static Validated<MailLife> step(ShopBook held, Transaction open, Ready mail, MailEvent event) {
        return MailState.step(mail.life().state(), event).then(after -> {
            open.lifeSteps().add(mail.life().next(event, desk(held).today(), mail.written().copy()));
            return MailLife.of(open, mail.life().id());
        });
    }
}
