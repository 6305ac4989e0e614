package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.Environment;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateProcessingTracer;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.page.TextsOnly;
import java.io.IOException;
import java.io.Writer;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.tree.TreeNode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Templates find their mistakes only where they are set. So each shipped one is set with samples of its records until every part of
 * every template was written at least once; a name that no record has, even one asked for with {@code ??}, is a failure.
 */
class TemplateNamesTest {

    private static final long SEED = 20261127;
    /** So many of each template reach all of its parts. */
    private static final int SETTINGS = 150;

    /** Read by shops' own templates perhaps, by ours of today not. */
    private static final Set<String> UNREAD = Set.of("Calls.how");

    /** The kinds of records of which each template's page is made. */
    private static final Map<String, List<Class<? extends Texts>>> PAGES = pages();

    private final Set<Object> seen = new HashSet<>();
    private final Set<String> read = new TreeSet<>();
    private final Map<Class<? extends Texts>, Map<String, String>> names = new HashMap<>();

    @Test
    void shippedTemplates_everyPart_findsEveryNameInTheRecords() throws Exception {
        Map<String, Template> all = new TreeMap<>();
        Configuration configuration = configuration("");
        for (String name : PAGES.keySet()) {
            setAll(configuration, name);
            setAll(configuration, Printer.STYLE, name);
        }
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            for (Path file : files.filter(path -> path.toString().contains(".ftl")).toList()) {
                String name = Path.of("templates").relativize(file).toString();
                all.put(name, configuration.getTemplate(name));
            }
        }

        assertThat(all).hasSizeGreaterThan(25).containsKeys(Printer.STYLE)
                .containsKeys(PAGES.keySet().toArray(String[]::new));
        assertThat(all.values().stream().flatMap(template -> unseen(root(template)).stream()).toList())
                .as("parts of templates that no sample reached").isEmpty();
        Set<String> components = PAGES.values().stream().flatMap(List::stream).flatMap(TemplateNamesTest::kindsWithin)
                .flatMap(kind -> Arrays.stream(kind.getRecordComponents()).map(TemplateNamesTest::named))
                .collect(Collectors.toCollection(TreeSet::new));
        components.removeAll(read);
        assertThat(components).as("components that no template reads").isEqualTo(UNREAD);
    }

    /** What the test above would say of a slip of the pen. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"${billTo.nam} | nam", "${titel} | titel",
            "<#if lines[0].hwo?has_content></#if> | hwo",
            "<#if shop.bank?? && shop.bnak??></#if> | bnak", "${w[\"total.nett\"]} | w[\"total.nett\"]",
            "<#list machines as machine>${machine.raedings?size}</#list> | raedings", "${logo.hight!} | hight",
            "<#if late!false></#if> | late"})
    void slip_isFound(String slip, String name) {
        assertThatThrownBy(() -> setAll(configuration(slip), "invoice.ftlh")).hasMessageContaining(name);
    }

    private void setAll(Configuration configuration, String template) throws TemplateException, IOException {
        setAll(configuration, template, template);
    }

    /** @param of which template the page is */
    private void setAll(Configuration configuration, String template, String of)
            throws TemplateException, IOException {
        PageSamples samples = new PageSamples(PAGES.getOrDefault(of, List.of()), new Random(SEED));
        Template read = configuration.getTemplate(template);
        for (int times = 0; times < SETTINGS; times++) {
            Environment setting = read.createProcessingEnvironment(samples.page(), Writer.nullWriter());
            setting.setTemplateProcessingTracer(new Tracer());
            setting.process();
        }
    }

    /** @param invoice the text of the invoice's template; empty for the shipped one */
    private Configuration configuration(String invoice) {
        StringTemplateLoader own = new StringTemplateLoader();
        if (!invoice.isEmpty()) {
            own.putTemplate("invoice.ftlh", invoice);
        }
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(new MultiTemplateLoader(
                new TemplateLoader[]{own, new ClassTemplateLoader(Printer.class, "/icequill/templates")}));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocalizedLookup(false);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setObjectWrapper(new Strict());
        return configuration;
    }

    /** Shows what templates are shown, notes what they read, and refuses names that they only ask for. */
    private final class Strict extends TextsOnly {

        @Override
        public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
            TemplateModel model = super.wrap(value);
            if (!(value instanceof Texts texts) || !(model instanceof TemplateHashModel shown)) {
                return model;
            }
            return new TemplateHashModel() {
                @Override
                public @Nullable TemplateModel get(String name) throws TemplateModelException {
                    Stream<Texts> parts = value instanceof Page page ? page.parts().stream() : Stream.of(texts);
                    List<String> found = parts
                            .flatMap(part -> Optional.ofNullable(names(part.getClass()).get(name)).stream()).toList();
                    if (found.isEmpty() && !(value instanceof Page && isOfAnotherPage(name))) {
                        throw new TemplateModelException("no record has the name " + name);
                    }
                    read.addAll(found);
                    return shown.get(name);
                }

                @Override
                public boolean isEmpty() {
                    return false;
                }
            };
        }
    }

    /** The style sheet, and parts that several papers share, ask what paper they are on. */
    private static boolean isOfAnotherPage(String name) {
        return Set.of("working", "sides").contains(name);
    }

    /** Notes which parts of templates are written. */
    private final class Tracer implements TemplateProcessingTracer {
        @Override
        public void enterElement(Environment setting, TracedElement element) {
            seen.add(element);
        }

        @Override
        public void exitElement(Environment setting, TracedElement element) {
            // How long it took does not matter.
        }
    }

    private List<String> unseen(TreeNode part) {
        List<String> unseen = new ArrayList<>();
        if (part.isLeaf() && part instanceof TemplateProcessingTracer.TracedElement written && !seen.contains(part)) {
            unseen.add(written.getTemplate().getName() + ":" + written.getBeginLine() + " " + written.getDescription());
        }
        Collections.list(part.children()).forEach(within -> unseen.addAll(unseen(within)));
        return unseen;
    }

    /** A kind of record, and those that it holds. */
    private static Stream<Class<?>> kindsWithin(Class<?> kind) {
        return Stream.concat(Stream.of(kind), Arrays.stream(kind.getRecordComponents())
                .flatMap(component -> held(component.getGenericType())).flatMap(TemplateNamesTest::kindsWithin));
    }

    private static Stream<Class<?>> held(Type type) {
        if (type instanceof ParameterizedType generic) {
            return held(generic.getActualTypeArguments()[0]);
        }
        return type instanceof Class<?> kind && Texts.class.isAssignableFrom(kind) && kind != Page.class
                ? Stream.of(kind)
                : Stream.empty();
    }

    /** The components of a kind of record: by its name and theirs. */
    private Map<String, String> names(Class<? extends Texts> kind) {
        return names.computeIfAbsent(kind, read -> Arrays.stream(read.getRecordComponents())
                .collect(Collectors.toMap(RecordComponent::getName, TemplateNamesTest::named)));
    }

    private static String named(RecordComponent component) {
        return component.getDeclaringRecord().getSimpleName() + "." + component.getName();
    }

    @SuppressWarnings("deprecation") // the only way to the parts of a template
    private static TreeNode root(Template template) {
        return template.getRootTreeNode();
    }

    private static Map<String, List<Class<? extends Texts>>> pages() {
        Map<String, List<Class<? extends Texts>>> pages = new LinkedHashMap<>();
        InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").papers().forEach(paper -> {
            PaperPage filling = PaperPage.of(paper);
            pages.put(filling.template(), Stream.<Class<? extends Texts>>concat(
                    filling.page().parts().stream().map(Texts::getClass), Stream.of(Printer.Dress.class)).toList());
        });
        return pages;
    }
}
