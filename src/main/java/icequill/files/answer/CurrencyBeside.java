package icequill.files.answer;

import java.util.ArrayList;
import java.util.List;
import javax.money.MonetaryAmount;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;

/** Lets a currency stand before the first amount of a record. */
final class CurrencyBeside extends ValueSerializerModifier {

    private static final long serialVersionUID = 1;

    @Override
    public List<BeanPropertyWriter> changeProperties(SerializationConfig config, BeanDescription.Supplier type,
            List<BeanPropertyWriter> properties) {
        List<BeanPropertyWriter> amounts = properties.stream().filter(CurrencyBeside::isAmount).toList();
        if (amounts.isEmpty()) {
            return properties;
        }
        List<BeanPropertyWriter> all = new ArrayList<>(properties);
        all.add(properties.indexOf(amounts.getFirst()),
                CurrencyWriter.of(amounts, type.get().getClassInfo(), config));
        return all;
    }

    private static boolean isAmount(BeanPropertyWriter property) {
        JavaType type = property.getType();
        return type.isTypeOrSubTypeOf(MonetaryAmount.class)
                || (type.isReferenceType() && type.getReferencedType().isTypeOrSubTypeOf(MonetaryAmount.class));
    }
}
