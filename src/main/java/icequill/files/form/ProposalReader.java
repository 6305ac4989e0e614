package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.work.Proposal;
import java.util.List;
import java.util.Optional;

/** Makes the repair that is to be quoted from the {@code quote} part of a planned visit. */
final class ProposalReader {

    private static final int MOST = 100;

    private ProposalReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    static Optional<Proposal> read(Fields quote) {
        Optional<Proposal.Found> found = quote.child("found").flatMap(entry -> entry.text("visit")
                .flatMap(visit -> entry.text("recommended").map(
                        recommended -> new Proposal.Found(visit, recommended, entry.place("recommended")))));
        return quote.text("machine").flatMap(machine -> quote.text("work")
                .map(work -> new Proposal(machine, work, found,
                        quote.percent("deposit", MOST).orElse(Percent.ZERO), stages(quote),
                        quote.percent("retainage", MOST).orElse(Percent.ZERO),
                        quote.integer("holdsDays").orElse(Proposal.USUAL_DAYS), quote.place("machine"))));
    }

    /** Checked, so that they are the whole and nothing is asked for twice. */
    private static List<Percent> stages(Fields quote) {
        List<Percent> stages = quote.numbers("stages").stream().map(Percent::new).toList();
        Percent sum = stages.stream().reduce(Percent.ZERO, Percent::plus);
        if (!stages.isEmpty() && !sum.equals(Percent.HUNDRED)) {
            quote.problems().add(Code.OUT_OF_RANGE, quote.place("stages"),
                    "the stages add up to " + sum.value().toPlainString() + " %", "100 % together");
            return List.of();
        }
        quote.percent("deposit", MOST).filter(deposit -> !stages.isEmpty() && !deposit.isZero())
                .ifPresent(deposit -> quote.problems().add(Code.NOT_ALLOWED, quote.place("deposit"),
                        "a deposit, and stages too", "the deposit as the first of the stages"));
        quote.percent("retainage", MOST).filter(held -> stages.isEmpty() && !held.isZero())
                .ifPresent(held -> quote.problems().add(Code.NOT_ALLOWED, quote.place("retainage"),
                        "something is held back, but nothing says of which payments", "stages: [40, 40, 20]"));
        return stages;
    }
}
