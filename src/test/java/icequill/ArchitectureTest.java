package icequill;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between packages, and what the pure ones must not touch. An arrow is added here, with its reason, when first used. */
class ArchitectureTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("icequill");

    /** Every package, with those it may use besides {@code problem}. */
    private static final Map<String, List<String>> ARROWS = arrows();

    private static final String[] PURE = {"icequill.money", "icequill.explain", "icequill.problem", "icequill.party",
            "icequill.work", "icequill.rates", "icequill.pricer", "icequill.tax", "icequill.document"};

    private static Map<String, List<String>> arrows() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        arrows.put("problem", List.of());
        arrows.put("money", List.of());
        arrows.put("explain", List.of("money"));
        arrows.put("party", List.of("money"));
        arrows.put("work", List.of("party", "explain", "money"));
        arrows.put("rates", List.of("work", "party", "explain", "money"));
        arrows.put("pricer", List.of("rates", "work", "party", "explain", "money"));
        // work, because taxability goes by class of work
        arrows.put("tax", List.of("pricer", "work", "party", "explain", "money"));
        arrows.put("document", List.of("tax", "pricer", "work", "party", "explain", "money"));
        arrows.put("files", List.of("document", "tax", "pricer", "rates", "work", "party", "explain", "money"));
        arrows.put("render", List.of("document", "tax", "pricer", "work", "party", "explain", "money"));
        arrows.put("office",
                List.of("files", "render", "document", "tax", "pricer", "rates", "work", "party", "explain",
                        "money"));
        arrows.put("cli",
                List.of("office", "document", "tax", "pricer", "rates", "work", "party", "explain", "money"));
        return arrows;
    }

    private static LayeredArchitecture layers() {
        LayeredArchitecture layers = Architectures.layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String name : ARROWS.keySet()) {
            layers = layers.layer(name).definedBy("icequill." + name);
        }
        for (Map.Entry<String, List<String>> arrow : ARROWS.entrySet()) {
            List<String> allowed = arrow.getKey().equals("problem")
                    ? List.of()
                    : Stream.concat(arrow.getValue().stream(), Stream.of("problem")).toList();
            layers = allowed.isEmpty()
                    ? layers.whereLayer(arrow.getKey()).mayNotAccessAnyLayer()
                    : layers.whereLayer(arrow.getKey()).mayOnlyAccessLayers(allowed.toArray(String[]::new));
        }
        return layers;
    }

    static Stream<ArchRule> rules() {
        return Stream.of(layers(), slices().matching("icequill.(*)").should().beFreeOfCycles(),
                noClasses().that().resideInAnyPackage(PURE).should().dependOnClassesThat().resideInAnyPackage(
                        "java.io..",
                        "java.nio..", "java.sql..", "java.net..", "java.util.logging..", "org.slf4j..",
                        "tools.jackson..",
                        "freemarker..", "org.jdbi..", "io.javalin..", "picocli.."),
                noClasses().that().resideInAnyPackage(PURE).should().dependOnClassesThat()
                        .haveFullyQualifiedName("java.time.Clock"),
                noClasses().that().resideInAnyPackage(PURE).should().callMethodWhere(clockIsRead()),
                noFields().that().areDeclaredInClassesThat().resideInAnyPackage(PURE).should()
                        .haveRawType(Double.TYPE).orShould().haveRawType(Float.TYPE),
                noClasses().that().resideOutsideOfPackage("icequill.money").and().resideInAnyPackage(PURE).should()
                        .callMethodWhere(decimalsAreRounded()),
                noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl|Common)(\\$.*)?"));
    }

    private static DescribedPredicate<JavaMethodCall> clockIsRead() {
        return DescribedPredicate.describe("the clock is read", call -> {
            String method = call.getTarget().getName();
            String owner = call.getTargetOwner().getName();
            return (method.equals("now") && owner.startsWith("java.time."))
                    || (owner.equals("java.lang.System") && Set.of("currentTimeMillis", "nanoTime").contains(method));
        });
    }

    private static DescribedPredicate<JavaMethodCall> decimalsAreRounded() {
        return DescribedPredicate.describe("decimals are rounded",
                call -> call.getTargetOwner().getName().equals("java.math.BigDecimal")
                        && Set.of("setScale", "divide", "round").contains(call.getTarget().getName()));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void program_keepsTheRule(ArchRule rule) {
        rule.check(PROGRAM);
    }

    @Test
    void everyClass_isInAKnownPackage() {
        assertThat(PROGRAM.stream().map(JavaClass::getPackageName).collect(Collectors.toSet()))
                .isSubsetOf(ARROWS.keySet().stream().map(name -> "icequill." + name).collect(Collectors.toSet()));
    }

    @Test
    void rules_plantedFaults_areFound() {
        JavaClasses planted = new ClassFileImporter().importClasses(PlantedHelper.class);

        assertThatThrownBy(() -> noClasses().should().callMethodWhere(clockIsRead()).check(planted))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> noClasses().should().callMethodWhere(decimalsAreRounded()).check(planted))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(
                () -> noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl|Common)(\\$.*)?")
                        .check(planted))
                .isInstanceOf(AssertionError.class);
    }

    /** Does what no class of the program may do. */
    static final class PlantedHelper {
        static BigDecimal age() {
            return new BigDecimal(System.nanoTime()).setScale(2, RoundingMode.HALF_EVEN);
        }
    }

    @Test
    void everyPackage_saysWhatItAddsAndIsNullMarked() throws IOException {
        for (String name : ARROWS.keySet()) {
            String info = Files.readString(Path.of("src/main/java/icequill", name, "package-info.java"))
                    .replaceAll("\\s+\\*?\\s*", " ");
            assertThat(info).as(name).contains("@NullMarked").contains("enter at").contains("{@link icequill." + name);
        }
    }

    @Test
    void topLevel_holdsOnlyWhatBelongsThere() throws IOException {
        List<String> ignored = Files.readAllLines(Path.of(".gitignore"));
        try (Stream<Path> entries = Files.list(Path.of(""))) {
            assertThat(entries.map(Path::toString)
                    .filter(name -> !name.startsWith(".") && !ignored.contains(name + "/")))
                    .containsExactlyInAnyOrder("README.md", "DEVELOPERS.md", "pom.xml", "src", "templates", "pricing",
                            "LICENSE");
        }
    }
}
