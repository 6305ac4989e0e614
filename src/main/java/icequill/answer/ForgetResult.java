package icequill.answer;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was blanked of a customer, and what stays.
 *
 * @param sites whose names, addresses and notes were blanked too
 * @param papers how many stay as they were issued
 * @param keptUntil the last day for which any of them is kept; empty without papers
 * @param files of the shop folder that may still name him, which nobody but the shop deletes
 */
public record ForgetResult(String forgotten, List<String> sites, int papers, Optional<LocalDate> keptUntil,
        List<String> files) {

    public ForgetResult {
        sites = List.copyOf(sites);
        files = List.copyOf(files);
    }
}
