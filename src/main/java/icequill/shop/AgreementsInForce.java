package icequill.shop;

import icequill.agreement.Tier;
import icequill.party.Site;
import icequill.problem.Problems;
import icequill.request.AgreementRequest;
import icequill.visits.AgreementInForce;
import icequill.visits.CountedCalls;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The agreements that run at sites. */
public record AgreementsInForce(ShopFolder folder) {

    /**
     * Those of a site that run on a day, by id.
     *
     * @param problems what is wrong with the plans and rates that they were priced by is added here
     */
    public List<AgreementInForce> of(Site site, LocalDate day, Problems problems) {
        return requests(site, day).flatMap(request -> of(request, site, day, problems).stream()).toList();
    }

    /** The same as they were asked for, of several sites that of this one. */
    public Stream<AgreementRequest> requests(Site site, LocalDate day) {
        return folder.agreementsAt(site.id()).stream()
                .flatMap(form -> folder.agreement(form).stream()
                        .flatMap(request -> request.sites().stream())
                        .filter(request -> request.part().isEmpty() || request.scope().site().equals(site.id()))
                        .filter(request -> request.isInForce(day)).findFirst().stream());
    }

    private Optional<AgreementInForce> of(AgreementRequest request, Site site, LocalDate day, Problems problems) {
        return folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(request.priced(), Optional.of(site))))
                .flatMap(rates -> problems.take(rates.tier(request.tier()))
                        .map(tier -> new AgreementInForce(request, tier, rates,
                                request.machines(site, day), calls(request, tier, site, day))));
    }

    /** The calls that an agreement includes at a site in the year of a day, and what used them; empty where it includes none. */
    public Optional<CountedCalls> calls(AgreementRequest request, Tier tier, Site site, LocalDate day) {
        return tier.includesCalls()
                ? Optional.of(CountedCalls.on(day, request, tier.included().number(), request.machines(site, day),
                        folder.answeredCalls(site.id())))
                : Optional.empty();
    }
}
