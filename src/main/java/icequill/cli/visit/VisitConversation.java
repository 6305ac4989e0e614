package icequill.cli.visit;

import icequill.answer.PriceSheet;
import icequill.answer.ProblemReport;
import icequill.answer.RecordedVisit;
import icequill.answer.WrittenForm;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.PriceTable;
import icequill.cli.terminal.Printout;
import icequill.office.asking.AskingOffice;
import icequill.office.asking.Draft;
import icequill.office.asking.Question;
import icequill.office.asking.Turn;
import icequill.office.asking.TypedVisit;
import icequill.office.asking.VisitDialogue;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Shows questions, reads answers, and goes back through them. */
final class VisitConversation {

    private static final String EXPLAIN = "?";
    private static final String GO_BACK = "<";

    private final AskingOffice office;
    private final VisitDialogue dialogue;
    private final BufferedReader typed;
    private final Printout printout;
    private final PrintWriter screen;
    private final Optional<Path> form;
    /** What keeps the visit from being priced, or stored. */
    private List<Problem> standing = List.of();
    /** What was answered, the last first. */
    private final Deque<Turn.Ask> answered = new ArrayDeque<>();

    /**
     * A conversation that has not begun.
     *
     * @param printout where JSON is asked for, questions do not go where the answer goes
     * @param form where the visit's form goes; empty to ask what is to become of it
     */
    VisitConversation(AskingOffice office, VisitDialogue dialogue, BufferedReader typed, Printout printout,
            Optional<Path> form) {
        this.office = office;
        this.dialogue = dialogue;
        this.typed = typed;
        this.printout = printout;
        this.screen = printout.json() ? printout.err() : printout.out();
        this.form = form;
    }

    ExitCode run() {
        screen.println(dialogue.greeting());
        Turn turn = dialogue.first();
        while (true) {
            switch (turn) {
            case Turn.Ask ask -> {
                show(ask.question());
                Optional<String> line = read();
                if (line.isEmpty()) {
                    return ended();
                }
                turn = next(ask, line.get().strip());
            }
            case Turn.Wrong wrong -> {
                screen.println(wrong.text());
                turn = answered.pop();
            }
            case Turn.Back back -> {
                answered.pop();
                turn = answered.pop();
            }
            case Turn.Told told -> {
                TypedVisit visit = office.typed(told.visit());
                Validated<PriceSheet> price = office.price(visit, dialogue.language());
                show(price);
                if (form.isPresent()) {
                    boolean isWritten = write(visit, form.get());
                    return isWritten && standing.isEmpty() ? ExitCode.OK : ExitCode.PROBLEMS;
                }
                turn = dialogue.closing(visit, price instanceof Validated.Valid);
            }
            case Turn.Store store -> {
                if (store(store.visit())) {
                    return ExitCode.OK;
                }
                turn = answered.pop();
            }
            case Turn.Write write -> {
                if (write(office.typed(write.visit()), Path.of(write.file()))) {
                    return ExitCode.OK;
                }
                turn = answered.pop();
            }
            case Turn.Leave leave -> {
                screen.println(dialogue.left());
                answer(new ProblemReport(List.of()));
                return ExitCode.OK;
            }
            }
        }
    }

    private Turn next(Turn.Ask ask, String line) {
        return switch (line) {
        case EXPLAIN -> {
            screen.println(ask.question().help());
            yield ask;
        }
        case GO_BACK -> before(ask);
        default -> {
            answered.push(ask);
            yield ask.answer(line);
        }
        };
    }

    private Turn before(Turn.Ask ask) {
        if (answered.isEmpty()) {
            screen.println(dialogue.atFirst());
            return ask;
        }
        return answered.pop();
    }

    private void show(Question question) {
        screen.println();
        screen.println(question.text() + question.proposal().map(answer -> " [" + answer + "]").orElse(""));
        question.choices().forEach(choice -> screen.println("  " + choice));
    }

    private Optional<String> read() {
        screen.flush();
        try {
            return Optional.ofNullable(typed.readLine());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("what was typed cannot be read", unreadable);
        }
    }

    /** Before the last question was answered. */
    private ExitCode ended() {
        screen.println(dialogue.left());
        answer(new ProblemReport(Stream.concat(standing.stream(), Stream.of(new Problem(Code.MISSING, Place.NOWHERE,
                "what was typed ends before the last question; nothing was stored", "an answer to each question")))
                .toList()));
        return ExitCode.PROBLEMS;
    }

    /** Where JSON is asked for, it is what comes of the conversation, and all that is said stands elsewhere. */
    private void answer(Object answer) {
        if (printout.json()) {
            printout.answer(answer);
        }
    }

    private void tell(List<Problem> problems) {
        standing = problems;
        problems.forEach(problem -> screen.println(problem.text()));
    }

    private void show(Validated<PriceSheet> price) {
        screen.println();
        switch (price) {
        case Validated.Valid<PriceSheet> valid -> {
            screen.println(PriceTable.text(valid.value(), false, false));
            valid.value().notices().forEach(notice -> screen.println("Note: " + notice.text()));
            standing = List.of();
        }
        case Validated.Invalid<PriceSheet> invalid -> tell(invalid.problems());
        }
    }

    private boolean store(Draft visit) {
        return switch (office.store(office.typed(visit))) {
        case Validated.Valid<RecordedVisit> stored -> {
            printout.answer(stored, found -> RecordedPrint.print(found, printout));
            yield true;
        }
        case Validated.Invalid<RecordedVisit> invalid -> {
            tell(invalid.problems());
            yield false;
        }
        };
    }

    private boolean write(TypedVisit visit, Path file) {
        return switch (office.write(visit, file)) {
        case Validated.Valid<Path> written -> {
            screen.println(dialogue.written(written.value()));
            answer(new WrittenForm(visit.id(), written.value(), standing));
            yield true;
        }
        case Validated.Invalid<Path> invalid -> {
            tell(Stream.concat(standing.stream(), invalid.problems().stream()).toList());
            yield false;
        }
        };
    }
}
