package icequill.office;

import icequill.document.BrushingRequest;
import icequill.files.ShopFolder;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Problems;
import icequill.rates.Rates;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** Reads requests for brushing sheets with their sites and rates. */
record BrushingLoader(ShopFolder folder) {

    /** Reads one request; one report holds all that is wrong with it, its site and the rates of the day. */
    Checked<BrushingInHand> of(Path file, LocalDate day) {
        Problems problems = new Problems();
        Optional<BrushingInHand> hand = read(file, day, problems);
        return Glyphs.report(folder, problems).or(hand::orElseThrow);
    }

    /**
     * The request as far as it could be read; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    Optional<BrushingInHand> read(Path file, LocalDate day, Problems problems) {
        Optional<BrushingRequest> request = folder.brushing(file);
        Optional<Site> site = request.flatMap(found -> folder.site(found.site(), found.place()));
        Optional<Rates> rates = folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(day)));
        site.ifPresent(where -> problems.addAll(BrushingInHand.unknown(request.orElseThrow(), where)));
        return site.flatMap(where -> rates.map(prices -> new BrushingInHand(folder.shop().orElseThrow(), where, prices,
                request.orElseThrow(), folder.forecast(day), folder.energy())));
    }
}
