package icequill.shop;

import icequill.party.Site;
import icequill.problem.Problems;
import icequill.request.AgreementRequest;
import icequill.visits.AgreementInForce;
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
                        .map(tier -> AgreementInForce.on(day, request, tier, rates, site)));
    }
}
