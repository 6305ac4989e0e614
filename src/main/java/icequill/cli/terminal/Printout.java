package icequill.cli.terminal;

import icequill.answer.JsonText;
import icequill.problem.Checked;
import icequill.problem.Problem;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine;

/** Prints what came of a command: the result, or all problems in one report. */
public record Printout(PrintWriter out, PrintWriter err, boolean json) {

    public static Printout of(CommandLine line, boolean json) {
        return new Printout(PlainText.before(line.getOut()), PlainText.before(line.getErr()), json);
    }

    /** Prints with the printer when sound, else the problems; gives the exit status. */
    public <T> int show(Checked<T> result, Consumer<T> printer) {
        return switch (result) {
        case Checked.Sound<T> sound -> {
            printer.accept(sound.value());
            yield ExitCode.OK.status();
        }
        case Checked.Faulty<T> faulty -> problems(faulty.problems());
        };
    }

    public int problems(List<Problem> problems) {
        if (json) {
            out.println(JsonText.problems(problems));
        } else {
            problems.forEach(problem -> err.println(PlainText.line(problem.text())));
            err.println(problems.size() == 1
                    ? "1 problem; nothing was written."
                    : problems.size() + " problems; nothing was written.");
        }
        return ExitCode.PROBLEMS.status();
    }
}
