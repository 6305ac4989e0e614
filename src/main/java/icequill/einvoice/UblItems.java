package icequill.einvoice;

import com.helger.xsds.ccts.cct.schemamodule.QuantityType;
import java.math.BigDecimal;
import java.util.List;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.ItemType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PriceType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.BaseQuantityType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.DescriptionType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.NoteType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.PriceAmountType;

/** What UBL's invoice lines and credit note lines have in common. */
final class UblItems {

    private UblItems() {
    }

    /** BT-127. */
    static List<NoteType> notes(Line line) {
        return line.note().map(NoteType::new).stream().toList();
    }

    /** BT-129 and BT-130. */
    static <T extends QuantityType> T quantity(Line line, T target) {
        target.setValue(line.quantity().number());
        target.setUnitCode(line.quantity().unit());
        return target;
    }

    /** BG-31 and BG-30. */
    static ItemType item(Line line) {
        ItemType item = new ItemType();
        line.place().map(DescriptionType::new).ifPresent(item::addDescription);
        item.setName(line.name());
        line.categories().stream().map(UblAmounts::category).forEach(item::addClassifiedTaxCategory);
        return item;
    }

    /** BG-29. A price for one says nothing about the base quantity. */
    static PriceType price(Line line, UblAmounts amounts) {
        PriceType price = new PriceType();
        price.setPriceAmount(amounts.of(line.quantity().price(), new PriceAmountType()));
        if (line.quantity().per().compareTo(BigDecimal.ONE) != 0) {
            BaseQuantityType base = new BaseQuantityType(line.quantity().per());
            base.setUnitCode(line.quantity().unit());
            price.setBaseQuantity(base);
        }
        return price;
    }
}
