package icequill.answer.rates;

import icequill.ledger.papers.Adoption;
import icequill.ledger.papers.StoredRates;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** All versions of the rates that the book holds or its papers name, the newest first. */
public record RatesList(List<ToldVersion> versions) {

    public RatesList {
        versions = List.copyOf(versions);
    }

    public static RatesList of(StoredRates rates, ZoneId zone) {
        List<Adoption> adoptions = rates.adoptions();
        Map<String, Long> papers = rates.papers();
        return new RatesList(Stream.concat(adoptions.stream().map(Adoption::version),
                papers.keySet().stream()).distinct()
                .map(id -> ToldVersion.of(id, adoptions, papers.getOrDefault(id, 0L), zone)).toList());
    }
}
