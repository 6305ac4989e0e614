package icequill.answer.claim;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.List;

/**
 * Claims, those first of which something is to be done first.
 *
 * @param unclaimed visits, by id, that did work under a warranty which nobody claimed
 */
public record ClaimList(List<ClaimSheet> claims, List<String> unclaimed) implements Listing {

    private static final List<String> HEAD = List.of("claim", "state", "next", "payer", "allowed", "site");

    public ClaimList {
        claims = List.copyOf(claims);
        unclaimed = List.copyOf(unclaimed);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return claims.stream().map(claim -> List.of(claim.claim(), ConstantKey.words(claim.state().name()),
                claim.next().map(LocalDate::toString).orElse("") + (claim.late() ? ", late" : ""),
                claim.payer().orElse(""), Amounts.plain(claim.allowed()), claim.siteName())).toList();
    }
}
