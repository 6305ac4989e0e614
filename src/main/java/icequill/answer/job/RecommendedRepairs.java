package icequill.answer.job;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.life.quote.QuoteState;
import icequill.life.repair.RecommendedRepair;
import icequill.shop.life.OpenRepairs;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Repairs that were recommended and that nobody did since, the oldest first. */
public record RecommendedRepairs(List<Row> repairs) implements Listing {

    private static final List<String> HEAD = List.of("day", "visit", "machine", "recommended", "state", "quote",
            "site");

    /** Where one stands. */
    public enum State {
        /** The customer said no on the visit. */
        DECLINED,
        /** The customer said yes on the visit. */
        WANTED,
        /** There is a visit to come for it, and no quote. */
        PLANNED, QUOTED,
        /** Nobody answered its quote in time. */
        LAPSED,
        /** The customer declined its quote. */
        REFUSED,
        /** Its quote was accepted. */
        ACCEPTED
    }

    /**
     * A repair.
     *
     * @param site by id
     * @param visit that recommended it, by id
     * @param machine by id
     * @param planned the visit to come for it, by id
     * @param quote by number
     */
    public record Row(String site, String siteName, String visit, LocalDate day, String machine, String recommended,
            State state, Optional<String> planned, Optional<String> quote) {

        /** A repair as it stands on a day. */
        public static Row of(OpenRepairs.One one, String siteName, LocalDate today) {
            RecommendedRepair repair = one.repair();
            return new Row(one.site(), siteName, repair.visit(), repair.day(), repair.machine(), repair.text(),
                    one.quote().map(quote -> state(quote, today)).orElseGet(() -> state(one)), one.planned(),
                    one.quote().map(quote -> quote.issued().number()));
        }

        private static State state(QuoteLife quote, LocalDate today) {
            return switch (quote.state()) {
            case QuoteState.Issued issued -> issued.terms().isLapsed(today) ? State.LAPSED : State.QUOTED;
            case QuoteState.Accepted accepted -> State.ACCEPTED;
            case QuoteState.Declined declined -> State.REFUSED;
            };
        }

        private static State state(OpenRepairs.One one) {
            return one.planned().isPresent()
                    ? State.PLANNED
                    : one.repair().isWanted() ? State.WANTED : State.DECLINED;
        }
    }

    public RecommendedRepairs {
        repairs = List.copyOf(repairs);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return repairs.stream().map(row -> List.of(row.day().toString(), row.visit(), row.machine(), row.recommended(),
                ConstantKey.words(row.state().name()), row.quote().orElse(""), row.siteName())).toList();
    }
}
