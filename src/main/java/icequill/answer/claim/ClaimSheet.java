package icequill.answer.claim;

import icequill.explain.ConstantKey;
import icequill.life.claim.ClaimState;
import icequill.life.claim.ClaimState.Noted;
import icequill.life.claim.ClaimState.Paid;
import icequill.life.claim.ClaimState.Refused;
import icequill.life.claim.ClaimState.Sent;
import icequill.life.claim.ClaimTerms;
import icequill.money.Amounts;
import icequill.shop.life.ClaimLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A claim for work under a warranty.
 *
 * @param claim by id
 * @param visit by id
 * @param payer as the machine names him; missing where nobody recorded one
 * @param work in words
 * @param listed what it would have cost the customer, before tax
 * @param allowed what the payer's rules pay of it
 * @param how that was figured
 * @param since the day of the last step
 * @param next the day by which something is to be done: the claim sent, what failed returned; missing where nothing is
 * @param late whether that day is past
 * @param reference of the payer
 * @param returned when what failed went back
 * @param paid what came in
 * @param reason why the payer refused; what the customer may be charged then is for a person to decide
 */
public record ClaimSheet(String claim, String visit, Optional<String> site, String siteName, Optional<String> payer,
        String work, MonetaryAmount listed, MonetaryAmount allowed, String how, State state, LocalDate since,
        Optional<LocalDate> sendBy, Optional<LocalDate> returnBy, Optional<LocalDate> next, boolean late,
        Optional<String> reference, Optional<LocalDate> returned, Optional<MonetaryAmount> paid,
        Optional<String> reason) {

    /** Where it stands. */
    public enum State {
        NOTED, SENT, PAID, REFUSED
    }

    /**
     * A claim as it is on a day.
     *
     * @param siteName empty where the site is unknown
     */
    public static ClaimSheet of(ClaimLife life, String siteName, LocalDate day) {
        ClaimState state = life.state();
        ClaimTerms terms = state.terms();
        Optional<LocalDate> next = life.next();
        return new ClaimSheet(life.id(), terms.visit(), life.site(), siteName,
                Optional.of(terms.payer()).filter(name -> !name.isEmpty()), terms.work(), terms.listed(),
                terms.allowed(), terms.how(), state(state), state.since(), terms.sendBy(), terms.returnBy(), next,
                next.filter(day::isAfter).isPresent(),
                state instanceof Sent sent ? sent.reference() : Optional.empty(), state.returned(),
                state instanceof Paid paid ? Optional.of(paid.amount()) : Optional.empty(),
                state instanceof Refused refused ? Optional.of(refused.reason()) : Optional.empty());
    }

    private static State state(ClaimState state) {
        return switch (state) {
        case Noted noted -> State.NOTED;
        case Sent sent -> State.SENT;
        case Paid paid -> State.PAID;
        case Refused refused -> State.REFUSED;
        };
    }

    /** Whether nothing is left to do. */
    public boolean isOver() {
        return (state == State.PAID || state == State.REFUSED) && next.isEmpty();
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("claim", claim));
        rows.add(List.of("visit", visit));
        rows.add(List.of("site", siteName));
        payer.ifPresent(name -> rows.add(List.of("payer", name)));
        rows.add(List.of("work", work));
        rows.add(List.of("listed", listed.getCurrency().getCurrencyCode() + " " + Amounts.plain(listed)));
        rows.add(List.of("allowed", Amounts.plain(allowed) + (how.isEmpty() ? "" : ": " + how)));
        rows.add(List.of("state", ConstantKey.words(state.name()) + " since " + since));
        sendBy.ifPresent(day -> rows.add(List.of("sendBy", day.toString())));
        returnBy.ifPresent(day -> rows.add(List.of("returnBy", day.toString())));
        reference.ifPresent(text -> rows.add(List.of("reference", text)));
        returned.ifPresent(day -> rows.add(List.of("returned", day.toString())));
        paid.ifPresent(amount -> rows.add(List.of("paid", Amounts.plain(amount))));
        reason.ifPresent(words -> {
            rows.add(List.of("reason", words));
            rows.add(List.of("customer",
                    "what he may be charged is for a person to decide; nothing is billed by itself"));
        });
        return rows;
    }
}
