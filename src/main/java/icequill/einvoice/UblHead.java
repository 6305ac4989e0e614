package icequill.einvoice;

import icequill.document.ServicePeriod;
import icequill.party.Remittance;
import java.util.List;
import java.util.Optional;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.BillingReferenceType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.DeliveryType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.DocumentReferenceType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.FinancialAccountType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.LocationType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.OrderReferenceType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PaymentMeansType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PaymentTermsType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PeriodType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.NoteType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.PaymentIDType;

/** What stands above the lines of a UBL document, apart from who sells and who buys. */
record UblHead(InvoiceContent content) {

    static final String VERSION = "2.1";

    /** EN 16931 gives the rules' name instead. */
    Optional<String> version() {
        return content.followsEn16931() ? Optional.empty() : Optional.of(VERSION);
    }

    /** BT-24. */
    Optional<String> rules() {
        return content.followsEn16931() ? Optional.of(Codes.EN16931) : Optional.empty();
    }

    List<NoteType> notes() {
        return content.notes().stream().map(NoteType::new).toList();
    }

    List<PeriodType> period() {
        if (!content.hasPeriod()) {
            return List.of();
        }
        ServicePeriod served = content.bill().served();
        PeriodType period = new PeriodType();
        period.setStartDate(served.from());
        period.setEndDate(served.until());
        return List.of(period);
    }

    /** BT-13. */
    Optional<OrderReferenceType> order() {
        return content.bill().served().purchaseOrder().map(number -> {
            OrderReferenceType order = new OrderReferenceType();
            order.setID(number);
            return order;
        });
    }

    /** BG-3. */
    List<BillingReferenceType> preceding() {
        return content.preceding().stream().map(original -> {
            DocumentReferenceType invoice = new DocumentReferenceType();
            invoice.setID(original.number());
            invoice.setIssueDate(original.date());
            BillingReferenceType reference = new BillingReferenceType();
            reference.setInvoiceDocumentReference(invoice);
            return reference;
        }).toList();
    }

    /** BG-13: the site, where there is but one, and the last day. */
    List<DeliveryType> delivery() {
        ServicePeriod served = content.bill().served();
        DeliveryType delivery = new DeliveryType();
        content.delivered().ifPresent(delivery::setActualDeliveryDate);
        if (served.isAtOneSite()) {
            LocationType location = new LocationType();
            served.storeNumber().ifPresent(location::setID);
            location.setAddress(UblParties.address(served.address()));
            delivery.setDeliveryLocation(location);
            delivery.setDeliveryParty(UblParties.named(served.site()));
        }
        return List.of(delivery);
    }

    /** BG-16. A credit asks for nothing. */
    List<PaymentMeansType> payment() {
        if (!content.asksForPayment()) {
            return List.of();
        }
        Remittance remittance = content.bill().shop().remittance();
        PaymentMeansType means = new PaymentMeansType();
        means.setPaymentMeansCode(
                remittance.account().isPresent() ? Codes.CREDIT_TRANSFER : Codes.NOT_DEFINED);
        means.addPaymentID(new PaymentIDType(content.number()));
        remittance.account().ifPresent(number -> {
            FinancialAccountType account = new FinancialAccountType();
            account.setID(number);
            account.setName(remittance.payee());
            means.setPayeeFinancialAccount(account);
        });
        return List.of(means);
    }

    /** BT-20. */
    List<PaymentTermsType> terms() {
        PaymentTermsType terms = new PaymentTermsType();
        terms.addNote(new NoteType(content.terms()));
        return List.of(terms);
    }
}
