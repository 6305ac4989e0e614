package icequill.render.view;

import icequill.agreement.Tier;
import icequill.document.CallCharge;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What calls cost in every labor band, and how soon somebody comes, as texts for {@code parts/plan.ftlh}. */
record CallChargesView(List<CallCharge> calls, Sentences sentences) {

    /**
     * The table.
     *
     * @param tiers whose response times are named beside the prices
     */
    Map<String, Object> model(List<Tier> tiers) {
        return Map.of("plans", tiers.stream().map(tier -> Sentences.capitalized(sentences.in(tier.name()))).toList(),
                "bands", calls.stream().map(call -> band(call, tiers)).toList());
    }

    private Map<String, Object> band(CallCharge call, List<Tier> tiers) {
        return Map.of("name", Sentences.capitalized(sentences.in(call.band().name())), "serviceCall",
                sentences.formats().amount(call.serviceCall()), "hours",
                call.grades().stream().map(this::hour).collect(Collectors.joining("; ")), "least",
                sentences.formats().amount(call.least()), "response",
                tiers.stream().map(tier -> response(tier, call)).toList());
    }

    private String hour(CallCharge.Hour hour) {
        String price = sentences.formats().amount(hour.price());
        return hour.minimum() == 0
                ? sentences.word("calls.hour", sentences.in(hour.grade()), price)
                : sentences.word("calls.hour-minimum", sentences.in(hour.grade()), price,
                        sentences.duration(hour.minimum()));
    }

    private String response(Tier tier, CallCharge call) {
        return Optional.ofNullable(tier.response().get(call.band().id()))
                .map(hours -> sentences.word("calls.within", String.valueOf(hours))).orElse("");
    }
}
