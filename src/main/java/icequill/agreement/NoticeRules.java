package icequill.agreement;

import icequill.party.Timeline;
import java.time.LocalDate;
import java.util.List;

/** The laws about notices of renewal that the shop has on record, dated. */
public record NoticeRules(Timeline<List<NoticeRule>> rules) {

    /** Those of a place, by ISO 3166, that are on record for a day; empty also when the place is unknown. */
    public List<NoticeRule> of(String jurisdiction, LocalDate day) {
        return rules.at(day).orElse(List.of()).stream().filter(rule -> rule.jurisdiction().equals(jurisdiction))
                .toList();
    }
}
