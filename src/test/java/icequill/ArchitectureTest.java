package icequill;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassReader;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.MethodVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Opcodes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between packages, and what the pure ones must not touch. An arrow is added here, with its reason, when first used. */
class ArchitectureTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("icequill");

    /** Every package, with those it may use besides {@code problem}. */
    private static final Map<String, List<String>> ARROWS = arrows();

    /** The packages whose classes only take data and give data. */
    private static final List<String> PURE = List.of("money", "explain", "problem", "party", "account", "work",
            "agreement",
            "rates", "planner", "pricer",
            "tax", "forecast", "document");
    /** Chances and months are no money, so forecasts may be inexact; their money is whole minor units. */
    private static final List<String> COUNTING = List.of("forecast");

    /** Classes that break every rule, in packages named like the program's. */
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("icequill.planted");

    private static final Set<String> INEXACT = Set.of("double", "float", "java.lang.Double", "java.lang.Float");

    private static final Set<String> ROUNDING = Set.of("round", "rint", "floor", "ceil");

    /** A rule, for the packages under a root. */
    record Rule(String name, Function<String, ArchRule> under) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static Map<String, List<String>> arrows() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        arrows.put("problem", List.of());
        arrows.put("money", List.of());
        arrows.put("explain", List.of("money"));
        arrows.put("party", List.of("money"));
        // party, because an account is somebody's; explain, because interest says how it was figured
        arrows.put("account", List.of("party", "explain", "money"));
        arrows.put("work", List.of("party", "explain", "money"));
        // work, because the slots of a tier name tasks and its discounts go by class
        arrows.put("agreement", List.of("work", "party", "explain", "money"));
        // agreement, because the plans that a shop offers are dated like its prices
        arrows.put("rates", List.of("agreement", "work", "party", "explain", "money"));
        arrows.put("planner", List.of("work", "party", "explain"));
        arrows.put("pricer", List.of("rates", "agreement", "work", "party", "explain", "money"));
        // work, because taxability goes by class of work
        arrows.put("tax", List.of("pricer", "work", "party", "explain", "money"));
        // party, because limits of energy go by the make and form of machines, and records are pooled by the kind of site
        arrows.put("forecast", List.of("party", "explain", "money"));
        // agreement, because quotes and agreements show plans, terms, visits and payments
        // planner, because plans and work sheets tell the timetable by which their minutes were found
        // account, because statements and reminders show what is owed
        // forecast, because comparison sheets show what to expect
        arrows.put("document",
                List.of("forecast", "planner", "account", "tax", "pricer", "agreement", "work", "party", "explain",
                        "money"));
        // forecast, because limits of energy are data
        arrows.put("files",
                List.of("forecast", "document", "planner", "account", "tax", "pricer", "rates", "agreement", "work",
                        "party",
                        "explain",
                        "money"));
        arrows.put("render",
                List.of("document", "forecast", "account", "tax", "pricer", "agreement", "work", "party", "explain",
                        "money"));
        // tax and pricer, because the tax and the price for one of each line are written by themselves
        arrows.put("einvoice", List.of("document", "tax", "pricer", "work", "party", "explain", "money"));
        // party, because customers and addresses are stored by their parts; money, because amounts are stored as minor units
        // files, because both make files that are their owner's alone
        arrows.put("ledger", List.of("files", "party", "money"));
        // ledger, because papers are issued into the book; forecast, because comparisons look ahead
        arrows.put("office",
                List.of("ledger", "forecast", "files", "render", "einvoice", "document", "account", "tax", "pricer",
                        "planner", "rates", "agreement", "work", "party", "explain", "money"));
        arrows.put("cli",
                List.of("office", "document", "tax", "pricer", "rates", "work", "party", "explain", "money"));
        return arrows;
    }

    static Stream<Rule> rules() {
        return Stream.of(
                new Rule("arrows", ArchitectureTest::layers),
                new Rule("no cycles", root -> slices().matching(root + ".(*)").should().beFreeOfCycles()),
                new Rule("pure packages reach nothing outside",
                        root -> noClasses().that().resideInAnyPackage(pure(root)).should().dependOnClassesThat()
                                .resideInAnyPackage("java.io..", "java.nio..", "java.sql..", "java.net..",
                                        "java.util.logging..", "org.slf4j..", "tools.jackson..", "freemarker..",
                                        "org.jdbi..", "io.javalin..", "picocli..")),
                new Rule("pure packages are given no clock",
                        root -> noClasses().that().resideInAnyPackage(pure(root)).should().dependOnClassesThat()
                                .haveFullyQualifiedName("java.time.Clock")),
                new Rule("pure packages read no clock",
                        root -> noClasses().that().resideInAnyPackage(pure(root)).should()
                                .callMethodWhere(clockIsRead())),
                new Rule("fields are exact",
                        root -> noFields().that().areDeclaredInClassesThat().resideInAnyPackage(exact(root))
                                .should(beInexact())),
                new Rule("parameters and results are exact",
                        root -> noCodeUnits().that().areDeclaredInClassesThat().resideInAnyPackage(exact(root))
                                .should(beInexact())),
                new Rule("money alone rounds",
                        root -> noClasses().that().resideOutsideOfPackage(root + ".money").should()
                                .accessTargetWhere(rounds())),
                new Rule("no binary fraction is rounded",
                        root -> noClasses().that().resideOutsideOfPackages(root + ".money", root + ".forecast")
                                .and(DescribedPredicate.not(draw())).should(roundBinary())),
                new Rule("names say what a class is for",
                        root -> noClasses().should()
                                .haveNameMatching(".*(Util|Utils|Helper|Manager|Impl|Common)(\\$.*)?")));
    }

    private static LayeredArchitecture layers(String root) {
        LayeredArchitecture layers = Architectures.layeredArchitecture().consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true);
        for (String name : ARROWS.keySet()) {
            layers = layers.layer(name).definedBy(root + "." + name);
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

    private static String[] exact(String root) {
        return PURE.stream().filter(name -> !COUNTING.contains(name)).map(name -> root + "." + name)
                .toArray(String[]::new);
    }

    private static String[] pure(String root) {
        return PURE.stream().map(name -> root + "." + name).toArray(String[]::new);
    }

    private static DescribedPredicate<JavaMethodCall> clockIsRead() {
        return DescribedPredicate.describe("the clock is read", call -> {
            String method = call.getTarget().getName();
            String owner = call.getTargetOwner().getName();
            return (method.equals("now") && owner.startsWith("java.time."))
                    || (owner.equals("java.lang.System") && Set.of("currentTimeMillis", "nanoTime").contains(method));
        });
    }

    /** Whatever class does the rounding, BigDecimal or another, it must be told how. */
    private static DescribedPredicate<JavaAccess<?>> rounds() {
        return DescribedPredicate.describe("a number is rounded", access -> {
            String owner = access.getTargetOwner().getName();
            String name = access.getTarget().getName();
            return owner.equals("java.math.MathContext")
                    || (owner.equals("java.math.RoundingMode") && !name.equals("UNNECESSARY"))
                    || (owner.equals("java.math.BigDecimal") && Set.of("setScale", "divide", "round").contains(name));
        });
    }

    /** Pictures are set to whole dots. */
    private static DescribedPredicate<JavaClass> draw() {
        return DescribedPredicate.describe("draw", type -> Set
                .of("icequill.render.FitSketch", "icequill.render.SwingSketch", "icequill.render.Drawings",
                        "icequill.render.Picture")
                .contains(type.getName()));
    }

    /** By a function that rounds, or by a cast, which the imported classes do not show and their code does. */
    private static ArchCondition<JavaClass> roundBinary() {
        return new ArchCondition<>("round binary fractions") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getMethodCallsFromSelf().stream().filter(
                        call -> call.getTargetOwner().isEquivalentTo(Math.class) && ROUNDING.contains(call.getName()))
                        .forEach(call -> events.add(new SimpleConditionEvent(type, true, call.getDescription())));
                casts(type).forEach(method -> events.add(new SimpleConditionEvent(type, true,
                        type.getName() + "." + method + " casts a binary fraction to a whole number")));
            }
        };
    }

    /** Methods in which a {@code double} or {@code float} is cast to {@code int} or {@code long}. */
    private static List<String> casts(JavaClass type) {
        List<String> methods = new ArrayList<>();
        try (InputStream code = type.getSource().orElseThrow().getUri().toURL().openStream()) {
            new ClassReader(code).accept(new ClassVisitor(Opcodes.ASM9) {
                @Override
                public MethodVisitor visitMethod(int access, String name, String descriptor, @Nullable String signature,
                        String @Nullable [] exceptions) {
                    return new MethodVisitor(Opcodes.ASM9) {
                        @Override
                        public void visitInsn(int opcode) {
                            if (opcode == Opcodes.D2I || opcode == Opcodes.D2L || opcode == Opcodes.F2I
                                    || opcode == Opcodes.F2L) {
                                methods.add(name);
                            }
                        }
                    };
                }
            }, ClassReader.SKIP_DEBUG);
            return methods;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static <T extends JavaMember> ArchCondition<T> beInexact() {
        return new ArchCondition<>("hold binary fractions") {
            @Override
            public void check(T member, ConditionEvents events) {
                boolean inexact = member.getAllInvolvedRawTypes().stream().map(JavaClass::getBaseComponentType)
                        .anyMatch(type -> INEXACT.contains(type.getName()));
                events.add(new SimpleConditionEvent(member, inexact, member.getDescription()));
            }
        };
    }

    @ParameterizedTest
    @MethodSource("rules")
    void program_keepsTheRule(Rule rule) {
        rule.under().apply("icequill").check(PROGRAM);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void plantedFault_isFound(Rule rule) {
        ArchRule planted = rule.under().apply("icequill.planted");

        assertThatThrownBy(() -> planted.check(PLANTED)).isInstanceOf(AssertionError.class)
                .hasMessageContaining("icequill.planted.");
    }

    @Test
    void everyClass_isInAKnownPackage() {
        assertThat(PROGRAM.stream().map(JavaClass::getPackageName).collect(Collectors.toSet()))
                .isSubsetOf(ARROWS.keySet().stream().map(name -> "icequill." + name).collect(Collectors.toSet()));
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
