package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.request.CallHistory;
import icequill.request.PlanRequest;
import icequill.request.Survey;
import icequill.work.ChargeClass;
import icequill.work.Proposal;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/** Makes a request for a maintenance quote from its file. */
public final class PlanRequestReader {

    private PlanRequestReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public static Optional<PlanRequest> read(Fields fields, Shop shop) {
        Optional<Survey> survey = fields.child("survey").flatMap(PlanRequestReader::survey);
        return PlanScopeReader.read(fields, shop).map(scope -> new PlanRequest(scope,
                PlanScopeReader.names(fields, "tiers"), fields.integer("holdsDays").orElse(Proposal.USUAL_DAYS),
                fields.text("emptiesBin").filter("customer"::equals).isPresent(),
                !fields.flag("withoutAnnex"), survey,
                fields.child("calls").flatMap(PlanRequestReader::calls)));
    }

    private static Optional<Survey> survey(Fields survey) {
        List<Survey.Condition> machines = survey.children("machines").stream()
                .flatMap(entry -> entry.id("machine")
                        .map(machine -> new Survey.Condition(new Visit.Named(machine, entry.place("machine")),
                                entry.day("lastCleaned"), PlanScopeReader.names(entry, "found"), entry.text("note")))
                        .stream())
                .toList();
        return survey.day("date").map(date -> new Survey(date, machines));
    }

    private static Optional<CallHistory> calls(Fields calls) {
        List<CallHistory.Part> parts = calls.children("parts").stream()
                .flatMap(part -> part.id("material")
                        .flatMap(material -> part.number("amount").map(amount -> new CallHistory.Part(
                                new Visit.Named(material, part.place("material")), amount)))
                        .stream())
                .toList();
        return calls.integer("minutes").flatMap(minutes -> calls.constant("on", ChargeClass.class)
                .map(on -> new CallHistory(calls.integer("lastYear"), minutes, on, parts, calls.place("minutes"))));
    }
}
