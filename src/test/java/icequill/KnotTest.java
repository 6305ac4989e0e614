package icequill;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Classes that need each other in a circle can only be understood, tested and moved together. */
class KnotTest {

    private static final JavaClasses PROGRAM = ProgramClasses.ALL;

    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("icequill.planted");

    @Test
    void program_hasNoCircleOfClasses() {
        assertThat(knots(PROGRAM)).isEmpty();
    }

    @Test
    void plantedCircle_isFound() {
        assertThat(knots(PLANTED)).contains(Set.of("icequill.planted.knot.One", "icequill.planted.knot.Other"));
    }

    /** The members of a sealed family name each other by design, so a family counts as one. */
    private static Set<Set<String>> knots(JavaClasses classes) {
        Map<String, Set<String>> arrows = new TreeMap<>();
        Map<String, Set<String>> members = new TreeMap<>();
        for (JavaClass each : classes) {
            String from = family(each);
            members.computeIfAbsent(from, key -> new TreeSet<>()).add(outermost(each).getName());
            each.getDirectDependenciesFromSelf().stream().map(arrow -> arrow.getTargetClass().getBaseComponentType())
                    .filter(target -> classes.contain(target.getName())).map(KnotTest::family)
                    .filter(to -> !to.equals(from))
                    .forEach(to -> arrows.computeIfAbsent(from, key -> new TreeSet<>()).add(to));
        }
        Map<String, Set<String>> reached = new TreeMap<>();
        arrows.keySet().forEach(from -> reached.put(from, reach(from, arrows)));
        Set<Set<String>> knots = new java.util.HashSet<>();
        for (String one : reached.keySet()) {
            Set<String> knot = new TreeSet<>();
            for (String other : reached.getOrDefault(one, Set.of())) {
                if (reached.getOrDefault(other, Set.of()).contains(one)) {
                    knot.addAll(members.getOrDefault(other, Set.of()));
                }
            }
            if (!knot.isEmpty()) {
                knots.add(knot);
            }
        }
        return knots;
    }

    private static Set<String> reach(String from, Map<String, Set<String>> arrows) {
        Set<String> seen = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(arrows.getOrDefault(from, Set.of()));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (seen.add(next)) {
                open.addAll(arrows.getOrDefault(next, Set.of()));
            }
        }
        return seen;
    }

    /** The outermost sealed type above a class in its package, or the class itself. */
    private static String family(JavaClass each) {
        JavaClass outermost = outermost(each);
        List<JavaClass> above = new ArrayList<>(outermost.getAllRawInterfaces());
        outermost.getRawSuperclass().ifPresent(above::add);
        return above.stream().filter(type -> type.getPackageName().equals(outermost.getPackageName()))
                .filter(type -> type.reflect().isSealed()).map(KnotTest::outermost).map(KnotTest::family).sorted()
                .findFirst().orElse(outermost.getName());
    }

    private static JavaClass outermost(JavaClass each) {
        return each.getEnclosingClass().map(KnotTest::outermost).orElse(each);
    }
}
