package icequill.cli.terminal;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Asks before what cannot be undone. */
public final class Confirmation {

    @Option(names = "--yes", description = "Does not ask.")
    private boolean yes;

    public boolean isGiven() {
        return yes;
    }

    /**
     * Goes on with a value where whoever means it says so, by --yes or by an answer.
     *
     * @param what would happen
     * @param word that has to be typed
     */
    public <T> Validated<T> of(T value, String what, String word) {
        String question = what + " Type " + word + " to go on: ";
        return yes || answer(question).filter(word::equals).isPresent()
                ? Validated.valid(value)
                : Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, question + "nobody did",
                        word + " as an answer, or --yes"));
    }

    /** Without a terminal there is no console, or one that reads nothing: either way nobody answers. */
    private static Optional<String> answer(String question) {
        return Optional.ofNullable(System.console()).map(console -> console.readLine("%s", question));
    }
}
