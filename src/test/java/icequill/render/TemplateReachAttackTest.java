package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import freemarker.template.TemplateModelException;
import icequill.ProgramClasses;
import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.page.TextsOnly;
import icequill.render.words.Words;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop's own template reads texts. It gets at no object, no method and no class behind them. */
class TemplateReachAttackTest {

    private static final Invoice INVOICE = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US")
            .invoice();

    @TempDir
    Path shop;

    /** At records, pages, lists, words, texts and what FreeMarker itself offers. */
    @ParameterizedTest
    @ValueSource(strings = {"${shop.getClass()}", "${shop.class}", "${shop.class.name}",
            "${shop.getClass().forName('x')}",
            "${shop.hashCode()}", "${shop.toString()}", "${shop.equals(shop)}", "${shop.name()}", "${shop['name']()}",
            "${shop['class']}", "${shop['getClass']}", "${shop}", "${shop?api.name()}", "${shop?api.class}",
            "${lines.size()}", "${lines.get(0)}", "${lines.class}", "${lines?api.size()}", "${lines[0].getClass()}",
            "${lines[0].numbered('9').text}", "${lines[0].text.length()}", "${lines[0].text.class}",
            "${lines[0].marked.booleanValue()?c}", "${w.class}", "${w.all()}", "${w.find('page')}", "${w?api.all()}",
            "${w.texts}", "${.data_model.getClass()}", "${.data_model.class}", "${.data_model.parts[0].lang}",
            "${.data_model['parts']?size}", "${parts?size}", "${style.getBytes()}", "${logo.getClass()}",
            "<#list shop?keys as k>${k}</#list>", "<#list shop?values as v>${v}</#list>",
            "<#list .data_model?keys as k>${k}</#list>", "${\"freemarker.template.utility.ObjectConstructor\"?new()}",
            "${\"freemarker.template.utility.JythonRuntime\"?new()}", "${\"icequill.render.page.Page\"?new()}",
            "<#assign x = \"freemarker.template.utility.Execute\"?new()>${x('id')}",
            "<@\"freemarker.template.utility.JythonRuntime\"?new()>x</@>", "${'shop.getClass()'?eval}",
            "<@'${r\"${shop.class}\"}'?interpret/>", "${lines?map(l -> l.getClass())?join(',')}",
            "${lines?filter(l -> l.class??)?size > 0}", "${shop?size}", "${shop.name?api.bytes}"})
    void template_reachesNothingBehindTheTexts(String attack) throws IOException {
        Files.writeString(Files.createDirectories(shop.resolve("templates")).resolve("invoice.ftlh"),
                "<html><body><p>" + attack + "</p></body></html>");

        assertThat(Printer.of(shop).html(INVOICE).problems()).extracting(Problem::code)
                .containsExactly(Code.TEMPLATE);
    }

    static Stream<Object> objects() {
        return Stream.of(INVOICE, Path.of("x"), String.class, new Object(), LocalDate.EPOCH, Map.of("a", "b"),
                new int[]{7}, 7, Optional.of(INVOICE), Language.ENGLISH, Printer.of(Path.of("x")));
    }

    @ParameterizedTest
    @MethodSource("objects")
    void object_thatIsNoText_isShownToNoTemplate(Object object) {
        assertThatThrownBy(() -> new TextsOnly().wrap(object)).isInstanceOf(TemplateModelException.class)
                .hasMessageContaining("texts only");
    }

    /** Whoever lets a record of the program's own into a view finds it here. */
    @Test
    void records_thatTemplatesRead_holdTextsOnly() {
        List<JavaClass> kinds = ProgramClasses.ALL.stream().filter(kind -> kind.isAssignableTo(Texts.class))
                .filter(kind -> !kind.isInterface()).toList();

        assertThat(kinds).hasSizeGreaterThan(60).allMatch(JavaClass::isRecord)
                .allMatch(kind -> kind.getPackageName().startsWith("icequill.render"));
        assertThat(kinds.stream().map(JavaClass::reflect).flatMap(kind -> Arrays.stream(kind.getRecordComponents()))
                .filter(component -> !holdsTexts(component.getGenericType())).map(RecordComponent::toString)).isEmpty();
    }

    private static boolean holdsTexts(Type type) {
        if (type instanceof ParameterizedType generic) {
            return List.of(List.class, Optional.class).contains(generic.getRawType())
                    && holdsTexts(generic.getActualTypeArguments()[0]);
        }
        return type == String.class || type == boolean.class || type == Words.class || type == Texts.class
                || type == Page.class
                || (type instanceof Class<?> kind && kind.isRecord() && Texts.class.isAssignableFrom(kind));
    }
}
