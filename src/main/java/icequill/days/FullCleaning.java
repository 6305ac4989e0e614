package icequill.days;

import icequill.agreement.Scope;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells full cleanings from lighter visits. */
final class FullCleaning {

    private FullCleaning() {
    }

    /** By which a full cleaning is known: tasks that full cleanings have, and no lighter visit. */
    static Set<String> tasks(List<Scope> scopes) {
        Set<String> light = scopes.stream().filter(scope -> !scope.isFullClean())
                .flatMap(scope -> scope.tasks().stream()).collect(Collectors.toSet());
        return scopes.stream().filter(Scope::isFullClean).flatMap(scope -> scope.tasks().stream())
                .filter(task -> !light.contains(task)).collect(Collectors.toSet());
    }
}
