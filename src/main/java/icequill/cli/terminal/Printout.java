package icequill.cli.terminal;

import icequill.answer.ProblemReport;
import icequill.files.answer.AnswerMapper;
import icequill.office.care.RatesOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine;

/** Prints what came of a command: the result, or all problems in one report. */
public record Printout(PrintWriter out, PrintWriter err, boolean json) {

    public static Printout of(CommandLine line, boolean json) {
        return new Printout(PlainText.before(line.getOut()), PlainText.before(line.getErr()), json);
    }

    /** Says when a shop's folder holds other rates than those that are in force in the book it shares; gives the folder. */
    public Path pricing(Path shop) {
        RatesOffice.differing(shop).ifPresent(other -> err.println("Note: " + PlainText.line(other.text())));
        return shop;
    }

    /** Prints with the printer when valid, else the problems; gives the exit status. */
    public <T> int show(Validated<T> result, Consumer<T> printer) {
        return switch (result) {
        case Validated.Valid<T> valid -> {
            printer.accept(valid.value());
            yield ExitCode.OK.status();
        }
        case Validated.Invalid<T> invalid -> problems(invalid.problems());
        };
    }

    /** An answer as JSON, where that is asked for, else as text. */
    public <T> int answer(Validated<T> result, Consumer<T> text) {
        return show(result, json ? this::answer : text);
    }

    /** An answer as JSON. */
    public void answer(Object answer) {
        out.println(AnswerMapper.text(answer));
    }

    /**
     * The exit status of work that went on where a part of it could not be done, which is told beside the answer.
     *
     * @param status of the rest
     */
    public int done(int status, List<Problem> problems) {
        if (problems.isEmpty()) {
            return status;
        }
        if (!json) {
            problems.forEach(problem -> err.println(PlainText.line(problem.text())));
        }
        return ExitCode.PROBLEMS.status();
    }

    public int problems(List<Problem> problems) {
        if (json) {
            answer(new ProblemReport(problems));
        } else {
            problems.forEach(problem -> err.println(PlainText.line(problem.text())));
            err.println(problems.size() == 1
                    ? "1 problem; nothing was written."
                    : problems.size() + " problems; nothing was written.");
        }
        return ExitCode.PROBLEMS.status();
    }
}
