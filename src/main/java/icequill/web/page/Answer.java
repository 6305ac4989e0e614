package icequill.web.page;

import icequill.answer.ProblemReport;
import icequill.ledger.papers.Pdf;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;
import java.util.function.Function;

/** What a page answers. */
public sealed interface Answer {

    /**
     * A page.
     *
     * @param template by name, without its ending
     * @param shown what the template shows
     * @param data the same question's answer as JSON
     */
    record Shown(String template, Object shown, Object data) implements Answer {

        /** A page that is shown whatever was wrong; as JSON the answer, or the problems. */
        public static Shown orProblems(String template, Object shown, Validated<?> answer) {
            return new Shown(template, shown, answer.found().map(found -> (Object) found)
                    .orElseGet(() -> new ProblemReport(answer.problems())));
        }
    }

    /** Another address, where what was made can be seen. */
    record Gone(String path) implements Answer {}

    /**
     * A paper's file, as it is.
     *
     * @param name under which it is saved
     */
    record Sent(Pdf pdf, String name) implements Answer {}

    /**
     * A paper as XML, to be saved.
     *
     * @param name under which it is saved
     */
    record Xml(String text, String name) implements Answer {}

    /**
     * A calendar, to be saved.
     *
     * @param name under which it is saved
     */
    record Calendar(String text, String name) implements Answer {}

    /** A page that is shown once more since what was asked for could not be done. */
    record Instead(Answer page, List<Problem> problems) implements Answer {
        public Instead {
            problems = List.copyOf(problems);
        }
    }

    /** All that is wrong with what was asked for. */
    record Refused(List<Problem> problems) implements Answer {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** A page that shows an answer as it is, or what was wrong. */
    static Answer of(String template, Validated<?> answer) {
        return of(answer, found -> new Shown(template, found, found));
    }

    /** The page of an answer, or what was wrong. */
    static <T> Answer of(Validated<T> answer, Function<T, Answer> page) {
        return switch (answer) {
        case Validated.Valid<T>(T found) -> page.apply(found);
        case Validated.Invalid<T>(List<Problem> problems) -> new Refused(problems);
        };
    }
}
