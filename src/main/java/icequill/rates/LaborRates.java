package icequill.rates;

import icequill.work.Band;
import icequill.work.BandWeek;
import java.util.List;
import java.util.Optional;

/**
 * What an hour of work costs, and when.
 *
 * @param counting how minutes become billed ones
 */
public record LaborRates(List<Band> bands, BandWeek week, List<Grade> grades, Counting counting, CrewRules crew) {

    public LaborRates {
        bands = List.copyOf(bands);
        grades = List.copyOf(grades);
    }

    LaborRates within(Band band) {
        return new LaborRates(bands, BandWeek.always(band), grades, counting, crew);
    }

    public Optional<Grade> grade(String id) {
        return grades.stream().filter(grade -> grade.id().equals(id)).findFirst();
    }
}
