package icequill.render;

import icequill.party.Language;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Words;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Records for templates with anything in them: lists of no, one or two items, optional things there and not, texts empty and not.
 *
 * @param kinds of records that a page is made of
 */
record PageSamples(List<Class<? extends Texts>> kinds, Random random) {

    /** The texts that templates ask for, and one that they do not. */
    private static final List<String> SAMPLES = List.of("", "text", "a4", "a + b");

    Page page() {
        return new Page(kinds.stream().<Texts>map(this::record).toList());
    }

    private <T> T record(Class<T> kind) {
        try {
            RecordComponent[] components = kind.getRecordComponents();
            Constructor<T> constructor = kind.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(
                    Arrays.stream(components).map(component -> of(component.getGenericType())).toArray());
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException("no sample of " + kind, fault);
        }
    }

    private Object of(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type item = generic.getActualTypeArguments()[0];
            return generic.getRawType() == Optional.class ? perhaps(item) : items(item);
        }
        if (type == String.class) {
            return SAMPLES.get(random.nextInt(SAMPLES.size()));
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        if (type == Words.class) {
            return Words.of(random.nextBoolean() ? Language.ENGLISH : Language.SPANISH);
        }
        if (type == Page.class) {
            // A page within a page is one of its sides, whose own sides nothing asks for.
            return new PageSamples(kinds.stream().filter(kind -> !kind.getSimpleName().equals("Sides")).toList(),
                    random).page();
        }
        return record((Class<?>) type);
    }

    private Optional<Object> perhaps(Type item) {
        return random.nextBoolean() ? Optional.of(of(item)) : Optional.empty();
    }

    private List<Object> items(Type item) {
        List<Object> items = new ArrayList<>();
        for (int count = random.nextInt(3); count > 0; count--) {
            items.add(of(item));
        }
        return List.copyOf(items);
    }
}
