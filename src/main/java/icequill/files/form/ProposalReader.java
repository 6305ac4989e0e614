package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.money.Percent;
import icequill.work.Proposal;
import java.util.Optional;

/** Makes the repair that is to be quoted from the {@code quote} part of a planned visit. */
final class ProposalReader {

    private ProposalReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    static Optional<Proposal> read(Fields quote) {
        Optional<Proposal.Found> found = quote.child("found").flatMap(entry -> entry.text("visit")
                .flatMap(visit -> entry.text("recommended").map(
                        recommended -> new Proposal.Found(visit, recommended, entry.place("recommended")))));
        return quote.text("machine").flatMap(machine -> quote.text("work")
                .map(work -> new Proposal(machine, work, found,
                        quote.percent("deposit", 100).orElse(Percent.ZERO),
                        quote.integer("holdsDays").orElse(Proposal.USUAL_DAYS), quote.place("machine"))));
    }
}
