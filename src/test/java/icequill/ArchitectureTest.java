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
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between packages, and what the pure ones must not touch. An arrow is added here, with its reason, when first used. */
class ArchitectureTest {

    private static final JavaClasses PROGRAM = ProgramClasses.ALL;

    /** Every package, with those it may use besides {@code problem}. */
    private static final Map<String, List<String>> ARROWS = arrows();

    /** The packages whose classes only take data and give data. */
    private static final List<String> PURE = List.of("money", "explain", "problem", "party", "account", "work",
            "agreement", "rates", "planner", "pricer", "tax", "forecast", "forecast.stops", "forecast.charges",
            "forecast.fit", "forecast.effects", "forecast.inputs", "document", "request", "visits", "plans", "outlook",
            "papers", "days", "planner.kept", "outlook.minutes", "life.quote", "life.job", "life.call", "life.repair",
            "life.agreement", "life.claim",
            "life.mail", "life.refrigerant", "life.telling");
    /** Chances and months are no money, so forecasts may be inexact; their money is whole minor units. */
    private static final List<String> COUNTING = List.of("forecast", "forecast.stops", "forecast.charges",
            "forecast.fit",
            "forecast.effects", "outlook", "outlook.minutes");
    /** Those of the plans that forecast. */
    private static final Set<String> COUNTERS = Set.of("CareOfSides", "Calendars", "ExpectedCharges", "OpenMonths",
            "ReserveAhead", "SideCare", "SiteRisks");

    /** Classes that break every rule, in packages named like the program's. */
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("icequill.planted");

    private static final Set<String> INEXACT = Set.of("double", "float", "java.lang.Double", "java.lang.Float");

    private static final long MOST_CLASSES = 40;

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
        room(arrows, "problem", "");
        room(arrows, "money", "");
        room(arrows, "explain", "money");
        room(arrows, "party", "explain");
        // explain, because interest says how it was figured
        room(arrows, "account", "party explain money");
        room(arrows, "work", "party explain money");
        // work, because the slots of a tier name tasks and its discounts go by class
        room(arrows, "agreement", "work party explain money");
        // agreement, because the plans that a shop offers are dated like its prices
        room(arrows, "rates", "agreement work party money");
        room(arrows, "planner", "work");
        room(arrows, "planner.kept", "planner work");
        room(arrows, "pricer", "rates agreement work party explain money");
        // work, because taxability goes by class of work; rates, because a place may have prices shown with their tax
        room(arrows, "tax", "pricer rates work party explain money");
        room(arrows, "forecast.stops", "");
        room(arrows, "forecast.charges", "forecast.stops");
        room(arrows, "forecast", "forecast.charges forecast.stops money");
        // records are pooled by the kind of site
        room(arrows, "forecast.fit", "forecast forecast.stops party");
        // limits of energy go by the make and form of machines
        room(arrows, "forecast.effects", "forecast forecast.stops party explain money");
        room(arrows, "forecast.inputs", "forecast.fit forecast forecast.stops work party explain money");
        // planner, because plans and work sheets tell the timetable; forecast, because comparison sheets show what to expect
        room(arrows, "document",
                "life.refrigerant forecast tax pricer planner agreement work account party explain money");
        room(arrows, "request", "pricer agreement work party money");
        room(arrows, "visits",
                "request document tax pricer planner.kept planner rates agreement work party explain money");
        // forecast, because a plan that includes calls is priced by what to expect of them
        room(arrows, "plans", "visits request document forecast.inputs forecast.effects forecast forecast.charges"
                + " forecast.stops tax pricer planner.kept planner"
                + " rates agreement work party explain money");
        room(arrows, "outlook",
                "plans request document forecast.inputs forecast.effects forecast.fit forecast forecast.charges"
                        + " forecast.stops pricer rates agreement work party explain money");
        // visits, because what a visit would take today is planned like one
        room(arrows, "outlook.minutes", "forecast visits planner.kept planner rates work party");
        // work, because visits recommend repairs
        room(arrows, "life.repair", "work");
        // life.repair, because the work sheet shows what was recommended before
        room(arrows, "papers",
                "life.refrigerant life.repair plans visits request document tax pricer rates agreement work account party explain money");
        // plans, because an agreement knows its calendar and its crews
        room(arrows, "days", "plans request pricer rates agreement party explain");
        room(arrows, "life.quote", "");
        room(arrows, "life.job", "");
        // agreement, because its terms say when it may end
        room(arrows, "life.agreement", "agreement");
        room(arrows, "life.claim", "");
        room(arrows, "life.mail", "party");
        room(arrows, "life.telling", "");
        // rates, because the law about leaks is dated data of the shop's; party, because a log is of machines of sites
        room(arrows, "life.refrigerant", "rates work party money");
        // work, because a call is a visit's reason and its order; money, because who allows more says how much
        room(arrows, "life.call", "work money");
        room(arrows, "files.disk", "files.yaml");
        room(arrows, "files.yaml", "party money");
        // party, because papers of earlier books name their language in words
        room(arrows, "files.paper", "document party explain money");
        room(arrows, "files.kept", "files.disk planner.kept");
        // files.disk, because the version of the rates is a hash of their files
        // files.yaml, because forms are told as they are
        room(arrows, "files.answer", "files.yaml explain money");
        room(arrows, "files.pricing",
                "files.disk files.yaml forecast.inputs forecast.effects forecast tax rates agreement work party"
                        + " explain money");
        room(arrows, "files.form",
                "files.pricing files.answer files.yaml files.disk life.call request forecast.inputs forecast.fit pricer"
                        + " agreement work account party explain money mail");
        room(arrows, "render.limits", "");
        // life.refrigerant and rates, because leaks are told alike on screens, pages and papers
        room(arrows, "render.words", "life.refrigerant rates work party explain money");
        room(arrows, "render.page", "render.words");
        room(arrows, "render.drawing", "render.page render.words document forecast money");
        room(arrows, "render.view",
                "life.refrigerant render.drawing render.page render.words document forecast tax pricer agreement work account party"
                        + " explain money");
        // files.disk, because the identifier of a PDF is a hash of it
        room(arrows, "render.pdf", "files.disk render.drawing render.page render.words render.limits document party");
        room(arrows, "render", "render.pdf render.view render.page render.limits document");
        // tax and pricer, because the tax and the price for one of each line are written by themselves
        room(arrows, "einvoice", "document tax pricer work party explain money");
        // party, because mail is written in a language; files.disk, because drafts are files
        room(arrows, "mail", "files.disk party");
        room(arrows, "ledger.store", "files.disk money");
        room(arrows, "ledger.find", "money");
        room(arrows, "ledger.trail", "ledger.store");
        // files.disk, because what goes along with a mail is known by its hash
        room(arrows, "ledger.entries", "ledger.trail ledger.store files.disk party");
        // files.pricing, because papers name the version of the rates that they were made by
        // explain, because kinds of papers have names
        room(arrows, "ledger.papers",
                "ledger.trail ledger.find ledger.store files.pricing files.disk explain money");
        room(arrows, "ledger.care",
                "ledger.papers ledger.entries ledger.trail ledger.find ledger.store files.pricing files.disk party explain");
        room(arrows, "ledger",
                "ledger.care ledger.papers ledger.entries ledger.trail ledger.store files.pricing files.disk");
        // work, because machines are named as visits name them
        room(arrows, "shop.steps", "ledger.entries ledger.store life.agreement request agreement work money");
        // shop.steps, because an agreement is read as it is after what happened to it
        room(arrows, "shop",
                "shop.steps ledger ledger.papers ledger.entries ledger.store render render.words files.form files.pricing"
                        + " files.kept files.paper files.yaml files.disk planner.kept papers outlook plans visits request document"
                        + " life.call forecast.inputs forecast.effects tax pricer rates agreement work account party explain money");
        // tax, because it is parts of a taxed price that are billed before a job is done
        room(arrows, "shop.life",
                "life.telling shop ledger ledger.papers ledger.entries ledger.store life.quote life.job life.repair document tax agreement"
                        + " files.form work party life.claim money life.mail explain");
        room(arrows, "answer.amounts", "render.words document tax explain agreement work account party money");
        room(arrows, "answer.price", "render.words document work party explain");
        room(arrows, "answer.forecast", "outlook plans document forecast.inputs forecast.fit forecast.charges forecast"
                + " forecast.stops pricer party explain money");
        room(arrows, "answer",
                "answer.amounts answer.days answer.forecast answer.price ledger ledger.care ledger.find ledger.papers ledger.entries ledger.trail"
                        + " render.words files.answer files.form files.yaml files.disk outlook plans visits document forecast"
                        + " forecast.stops tax pricer planner rates agreement work account party explain money");
        // shop, because a row of a list is made of a call of the book
        room(arrows, "answer.call", "answer.history shop files.answer render.words life.call work explain");
        room(arrows, "answer.minutes", "outlook.minutes forecast files.answer render.words explain");
        room(arrows, "answer.today", "answer.call files.answer render.words");
        room(arrows, "answer.entry", "");
        room(arrows, "answer.site", "files.answer render.words agreement party explain work");
        room(arrows, "answer.register", "answer agreement explain");
        room(arrows, "answer.paper", "answer ledger.papers files.answer money");
        // money, because prices are shown before and after
        room(arrows, "answer.rates", "answer ledger.papers files.pricing files.answer money explain");
        // ledger.entries, because a history tells whether a visit was planned or withdrawn; money, because visits earn it
        room(arrows, "answer.history",
                "answer.claim life.refrigerant ledger.papers ledger.entries render.words files.answer rates work party explain money");
        room(arrows, "answer.shown",
                "answer.amounts answer.history answer shop ledger ledger.papers render.words files.answer life.quote"
                        + " files.yaml document party explain money shop.life answer.mail");
        room(arrows, "answer.claim", "answer life.claim explain money shop.life");
        room(arrows, "answer.mail", "answer life.mail shop shop.life ledger ledger.entries explain party");
        room(arrows, "answer.job",
                "answer life.job life.quote life.repair ledger.papers document party explain money shop.life tax");
        room(arrows, "answer.agreement",
                "answer answer.register life.agreement render.words files.answer agreement explain money");
        // outlook and plans, because a quote that is worked out is told with what is expected of calls
        room(arrows, "answer.quote",
                "answer.amounts answer.forecast answer.price answer.shown answer ledger.papers render.words files.answer"
                        + " outlook plans document forecast agreement party explain money");
        // files.disk, because a calendar is a file
        room(arrows, "answer.days", "life.telling days files.answer files.disk render.words explain");
        room(arrows, "office.writing",
                "shop ledger ledger.papers ledger.entries ledger.find einvoice render render.pdf"
                        + " render.words files.form files.pricing files.paper files.yaml files.disk papers visits"
                        + " request document tax work party money life.mail shop.life");
        // answer.mail, because a mail is shown before it is written
        room(arrows, "office.letters",
                "office.writing answer answer.mail shop shop.life ledger ledger.papers ledger.entries files.form life.mail mail"
                        + " render.words request document agreement account party");
        // shop.steps here and below, because whose visit it is was noted at a renewal
        room(arrows, "office.billing",
                "office.writing answer.register answer answer.paper shop shop.steps ledger ledger.papers ledger.entries files.form files.yaml life.call papers plans"
                        + " visits request document agreement work account party explain money shop.life life.job tax");
        room(arrows, "office.register",
                "office.billing answer.register answer.shown answer.mail answer shop ledger ledger.papers ledger.entries files.answer files.form files.yaml"
                        + " files.disk papers outlook plans visits request document tax account party explain money");
        room(arrows, "office",
                "office.billing office.letters office.writing answer shop ledger ledger.papers ledger.entries files.form papers outlook"
                        + " plans visits request document forecast.inputs work party answer.register agreement rates life.repair shop.life"
                        + " explain render.words life.agreement shop.steps");
        room(arrows, "office.asking",
                "office.billing office answer.entry answer shop ledger ledger.papers ledger.entries ledger.trail render.words files.form"
                        + " files.yaml files.disk life.call life.repair request rates work party explain money shop.life");
        // ledger.find, because names are compared as papers are found
        // pricer, tax and money, because earnings and prices that are tried are summed up; account, because cards cost
        room(arrows, "office.care", "office.register office.billing office.writing answer.shown answer.history"
                + " answer.call answer.claim answer.mail answer.minutes answer.rates answer.site answer.today answer shop ledger ledger.care ledger.papers ledger.entries ledger.find ledger.trail"
                + " einvoice render.pdf render.words files.pricing files.form files.paper files.yaml files.disk papers"
                + " outlook.minutes outlook plans visits request document tax pricer rates agreement work account party explain money shop.life life.mail");
        // account and papers, because what a customer owes is said while he calls
        room(arrows, "office.call",
                "office.care office.register answer.call answer.history shop ledger ledger.entries ledger.find ledger.trail"
                        + " files.form render.words life.call life.repair papers visits rates agreement work account party shop.life");
        // office.asking, because a repair is typed as its visit
        room(arrows, "office.quoting",
                "office office.asking office.care office.register office.billing office.writing answer.quote answer.shown"
                        + " life.quote money explain answer.forecast answer.history answer shop ledger ledger.papers ledger.entries"
                        + " render.words files.form files.yaml outlook plans request document forecast.inputs tax rates agreement"
                        + " party answer.job life.job shop.life");
        // files.yaml, because a planned visit is written like a form; money, because minutes of the way are whole
        room(arrows, "office.days",
                "office.letters papers visits life.telling office.billing office.care answer answer.days answer.site shop shop.life shop.steps ledger ledger.entries ledger.trail files.form files.yaml"
                        + " render.words life.call days plans request rates agreement work party explain money");
        // office.care, because it knows the sentences of a reader; office and answer.register, because it lists what is to be done about renewals
        room(arrows, "office.agreement",
                "office answer.register office.quoting office.care office.billing answer.agreement answer shop shop.life shop.steps files.form files.yaml ledger ledger.papers ledger.entries"
                        + " life.agreement render.words plans visits request document agreement work party explain money");
        // life.agreement and life.telling, because customers know by mails that went out
        room(arrows, "office.mail",
                "shop.steps life.agreement life.telling agreement files.disk mail office.care office.letters office.writing answer.history answer.mail shop shop.life files.form ledger ledger.find ledger.entries ledger.papers life.mail"
                        + " document party explain office.register");
        room(arrows, "office.demo",
                "office office.call office.register office.billing answer shop ledger ledger.papers ledger.entries files.form files.disk outlook plans visits"
                        + " request document agreement work party money office.quoting life.job life.quote");
        room(arrows, "answer.refrigerant", "life.refrigerant files.answer render.words work");
        // office.care and answer.history, because days and places are asked for as of visits
        room(arrows, "office.refrigerant",
                "answer.refrigerant answer.history answer life.refrigerant office.care office.writing document request ledger.papers rates work party render.words shop ledger ledger.entries");
        room(arrows, "office.claim",
                "answer.claim life.claim pricer rates render.words work party money explain shop shop.life ledger ledger.entries visits");
        room(arrows, "web.door", "party");
        // files.disk, because styles lie at an address made of their hash; render.words, because pages speak as papers do
        room(arrows, "web.page",
                "web.door office.register answer shop ledger.papers render.page render.words files.answer files.yaml files.disk party explain money");
        // render.words, because two versions of a visit are told in the words of its page; request, because a timetable is asked for
        room(arrows, "web.visit",
                "web.page office office.asking office.billing office.call office.quoting office.care office.register answer answer.call answer.entry render.words"
                        + " answer.history answer.price request shop explain");
        room(arrows, "web.call",
                "web.page office.call office.care office.register answer.call answer.register explain money");
        room(arrows, "web.agreement",
                "office.register web.page office office.agreement answer.agreement answer.register life.agreement agreement explain");
        // render.view, because ways of care are drawn as on their papers; files.yaml, because it knows the languages there are words for
        room(arrows, "web.offer", "web.page office.quoting office.care office.billing office.register answer.quote"
                + " answer.job life.quote life.job agreement document"
                + " answer.register answer.shown answer.forecast answer shop ledger.papers render.view render.page"
                + " files.yaml request party explain tax");
        room(arrows, "web.refrigerant", "request web.page office.refrigerant office.care answer.refrigerant");
        room(arrows, "web.claim", "web.page office.claim answer.claim life.claim");
        // request and document, because a paper without a number is asked for by what it is to say
        room(arrows, "web.mail",
                "web.page office office.care office.days office.letters office.mail answer answer.mail life.mail request document shop party explain");
        room(arrows, "web.days", "life.telling web.page office.days answer.days");
        room(arrows, "web.rates", "web.page office.care office.register answer.rates answer.register files.pricing");
        room(arrows, "web.run",
                "web.page web.door office office.asking office.billing office.care office.register answer answer.paper"
                        + " answer.price answer.today files.disk shop party answer.mail office.mail");
        room(arrows, "web",
                "web.refrigerant web.agreement web.offer web.run web.days web.rates web.call web.visit web.page web.door office.call office.quoting office.billing office.care"
                        + " office.register answer answer.call answer.history answer.job answer.minutes answer.paper answer.register answer.shown answer.site answer.today ledger.papers"
                        + " files.disk shop request explain office web.claim web.mail render.view");
        // files.yaml, because --lang takes any language that there are words for
        room(arrows, "cli.terminal",
                "files.answer files.yaml office.care office.billing office answer.shown answer.history answer.paper answer"
                        + " shop party request explain");
        room(arrows, "cli.register",
                "cli.terminal office.care office.register office answer.history answer.site answer shop request document");
        room(arrows, "cli.days", "life.telling request cli.terminal office.days answer.days shop");
        room(arrows, "cli.visit",
                "cli.days cli.terminal office.asking office.call office.quoting office.care office.billing office answer.call answer.history answer.job answer.minutes answer shop request"
                        + " life.job explain tax");
        room(arrows, "cli.mail", "cli.terminal office.mail answer.mail life.mail shop explain");
        room(arrows, "cli.refrigerant", "request answer cli.terminal office.refrigerant answer.refrigerant shop");
        room(arrows, "cli.claim", "cli.terminal office.claim answer.claim life.claim shop");
        room(arrows, "cli.offer",
                "cli.terminal office.quoting office.care office.billing office answer.quote answer.shown answer shop outlook request"
                        + " life.quote agreement explain answer.register office.agreement answer.agreement life.agreement");
        room(arrows, "cli.billing",
                "cli.terminal office.care office.billing office answer.rates answer.paper answer shop request money");
        room(arrows, "cli.book",
                "cli.terminal web office.demo office.care office.register answer.rates answer.today answer files.form shop");
        room(arrows, "cli",
                "cli.register cli.visit cli.offer cli.billing cli.book cli.terminal cli.claim cli.refrigerant cli.mail");
        return arrows;
    }

    private static void room(Map<String, List<String>> arrows, String name, String uses) {
        arrows.put(name, Stream.of(uses.split(" ")).filter(used -> !used.isEmpty()).toList());
    }

    static Stream<Rule> rules() {
        return Stream.of(
                new Rule("arrows", ArchitectureTest::layers),
                new Rule("no cycles", root -> slices().matching(root + ".(**)").should().beFreeOfCycles()),
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
                        root -> noFields().that().areDeclaredInClassesThat(areExact(root))
                                .should(beInexact())),
                new Rule("parameters and results are exact",
                        root -> noCodeUnits().that().areDeclaredInClassesThat(areExact(root))
                                .should(beInexact())),
                new Rule("money alone rounds",
                        root -> noClasses().that().resideOutsideOfPackage(root + ".money").should()
                                .accessTargetWhere(rounds())),
                new Rule("no binary fraction is rounded",
                        root -> noClasses().that().resideOutsideOfPackages(root + ".money", root + ".forecast",
                                root + ".forecast.stops", root + ".forecast.charges")
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

    private static DescribedPredicate<JavaClass> areExact(String root) {
        Set<String> packages = PURE.stream().filter(name -> !COUNTING.contains(name)).map(name -> root + "." + name)
                .collect(Collectors.toSet());
        return DescribedPredicate.describe("are exact", type -> packages.contains(type.getPackageName())
                && !COUNTERS.contains(outermost(type).getSimpleName()));
    }

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(ArchitectureTest::outermost).orElse(type);
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
                .of("icequill.render.drawing.FitSketch", "icequill.render.drawing.SwingSketch",
                        "icequill.render.drawing.Drawings", "icequill.render.pdf.ShapedWidths",
                        "icequill.render.pdf.Picture")
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
    void everyArrow_isUsed() {
        Map<String, Set<String>> used = new TreeMap<>();
        PROGRAM.forEach(type -> type.getDirectDependenciesFromSelf()
                .forEach(use -> used.computeIfAbsent(type.getPackageName(), name -> new TreeSet<>())
                        .add(use.getTargetClass().getBaseComponentType().getPackageName())));
        List<String> idle = ARROWS.entrySet().stream().flatMap(arrow -> arrow.getValue().stream()
                .filter(to -> !used.getOrDefault("icequill." + arrow.getKey(), Set.of()).contains("icequill." + to))
                .map(to -> arrow.getKey() + " -> " + to)).toList();

        assertThat(idle).isEmpty();
    }

    @Test
    void everyPackage_hasFortyClassesAtMost() {
        Map<String, Long> sizes = PROGRAM.stream().filter(type -> type.getEnclosingClass().isEmpty())
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));

        assertThat(sizes).allSatisfy((name, size) -> assertThat(size).as(name).isLessThanOrEqualTo(MOST_CLASSES));
    }

    @Test
    void everyPackage_saysWhatItAddsAndIsNullMarked() throws IOException {
        for (String name : ARROWS.keySet()) {
            String info = Files
                    .readString(Path.of("src/main/java/icequill", name.replace('.', '/'), "package-info.java"))
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
