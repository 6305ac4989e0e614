package icequill;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What nothing that lives in the program calls is dead, even if tests or other dead code call it. */
class UnusedCodeTest {

    private static final JavaClasses PROGRAM = ProgramClasses.ALL;

    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("icequill.planted");

    /** What others than the program's code call: the start of the virtual machine. */
    private static final Set<String> ENTRY = Set.of("icequill.cli.Main.main([Ljava.lang.String;)");

    /** Whatever the templates of pages read of objects, by its name. */
    private static final Set<String> READ_BY_PAGES = readByPages();

    private static Set<String> readByPages() {
        try (Stream<Path> templates = Files.list(Path.of("src/main/resources/icequill/web"))) {
            return templates.filter(file -> file.toString().endsWith(".ftlh"))
                    .flatMap(file -> Pattern.compile("[.]([a-z][A-Za-z]*)").matcher(text(file)).results())
                    .map(found -> found.group(1)).collect(Collectors.toSet());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void program_hasNoMethodThatNobodyCalls() {
        assertThat(uncalled(PROGRAM)).isEmpty();
    }

    @Test
    void plantedMethods_areFound() {
        assertThat(uncalled(PLANTED)).contains("icequill.planted.knot.One.unused()",
                "icequill.planted.knot.One.usedByUnused()");
    }

    @Test
    void program_hasNoClassThatNobodyNames() {
        assertThat(PROGRAM.stream().filter(each -> each.getEnclosingClass().isEmpty())
                .filter(each -> !each.getSimpleName().equals("package-info")).filter(each -> !holdsConstantsOnly(each))
                .filter(each -> each.getDirectDependenciesToSelf().stream()
                        .allMatch(arrow -> outermost(arrow.getOriginClass()).equals(each)))
                .map(JavaClass::getName).filter(name -> !name.equals("icequill.cli.Main"))).isEmpty();
    }

    /** The compiler puts their values where they are used. */
    private static boolean holdsConstantsOnly(JavaClass each) {
        return each.getMethods().isEmpty() && !each.isRecord() && !each.isInterface();
    }

    private static List<String> uncalled(JavaClasses classes) {
        Set<JavaCodeUnit> live = live(classes);
        return classes.stream().flatMap(each -> each.getMethods().stream()).filter(UnusedCodeTest::isOurs)
                .filter(method -> !live.contains(method)).map(JavaMethod::getFullName).sorted().toList();
    }

    /** What is called by the start, by libraries, when a class or an object begins, or by what is live itself. */
    private static Set<JavaCodeUnit> live(JavaClasses classes) {
        Map<JavaCodeUnit, List<JavaCodeUnit>> callees = new HashMap<>();
        Deque<JavaCodeUnit> reached = new ArrayDeque<>();
        for (JavaClass each : classes) {
            for (JavaCodeUnit unit : each.getCodeUnits()) {
                if (!(unit instanceof JavaMethod method) || !isOurs(method)) {
                    reached.add(unit);
                } else {
                    Stream.concat(method.getAccessesToSelf().stream().map(JavaAccess::getOrigin),
                            method.getReferencesToSelf().stream().map(JavaAccess::getOrigin))
                            .forEach(caller -> callees.computeIfAbsent(caller, any -> new ArrayList<>()).add(method));
                }
            }
        }
        Set<JavaCodeUnit> live = new HashSet<>();
        while (!reached.isEmpty()) {
            JavaCodeUnit unit = reached.pop();
            if (live.add(unit)) {
                reached.addAll(callees.getOrDefault(unit, List.of()));
            }
        }
        return live;
    }

    private static JavaClass outermost(JavaClass each) {
        return each.getEnclosingClass().map(UnusedCodeTest::outermost).orElse(each);
    }

    /** Templates and JSON read records by their components, and the command line's library calls what it is told to. */
    private static boolean isOurs(JavaMethod method) {
        return !method.getModifiers().contains(JavaModifier.SYNTHETIC)
                && !method.getModifiers().contains(JavaModifier.BRIDGE) && !isOfEveryEnum(method)
                && !ENTRY.contains(method.getFullName()) && !isReadByPages(method) && !isComponent(method)
                && !isInherited(method)
                && method.getAnnotations().stream()
                        .noneMatch(mark -> mark.getRawType().getName().startsWith("picocli."));
    }

    private static boolean isReadByPages(JavaMethod method) {
        String room = method.getOwner().getPackageName();
        return READ_BY_PAGES.contains(method.getName())
                && Stream.of("icequill.answer", "icequill.web").anyMatch(room::startsWith);
    }

    private static boolean isOfEveryEnum(JavaMethod method) {
        return method.getOwner().isEnum() && Set.of("values", "valueOf").contains(method.getName());
    }

    private static boolean isComponent(JavaMethod method) {
        return method.getOwner().isRecord() && method.getRawParameterTypes().isEmpty()
                && method.getOwner().tryGetField(method.getName()).isPresent();
    }

    private static boolean isInherited(JavaMethod method) {
        Stream<JavaClass> above = Stream.concat(method.getOwner().getAllRawSuperclasses().stream(),
                method.getOwner().getAllRawInterfaces().stream());
        return Set.of("toString", "equals", "hashCode").contains(method.getName()) || above
                .anyMatch(type -> Optional.of(type).stream().flatMap(each -> each.getMethods().stream())
                        .anyMatch(other -> other.getName().equals(method.getName())
                                && other.getRawParameterTypes().size() == method.getRawParameterTypes().size()));
    }
}
