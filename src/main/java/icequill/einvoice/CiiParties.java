package icequill.einvoice;

import icequill.document.ServicePeriod;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Shop;
import java.util.List;
import java.util.Optional;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.HeaderTradeAgreementType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.HeaderTradeDeliveryType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.LegalOrganizationType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.ReferencedDocumentType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.SupplyChainEventType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TaxRegistrationType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeAddressType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeContactType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradePartyType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.UniversalCommunicationType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.IDType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.TextType;

/** Seller, buyer and site in CII. */
record CiiParties(InvoiceContent content) {

    /** Kind of a VAT identifier, by UNTDID 1153. */
    private static final String VAT_NUMBER = "VA";

    HeaderTradeAgreementType agreement() {
        ServicePeriod served = content.bill().served();
        HeaderTradeAgreementType agreement = new HeaderTradeAgreementType();
        served.storeNumber().ifPresent(agreement::setBuyerReference);
        agreement.setSellerTradeParty(seller());
        agreement.setBuyerTradeParty(buyer());
        served.purchaseOrder().ifPresent(number -> {
            ReferencedDocumentType order = new ReferencedDocumentType();
            order.setIssuerAssignedID(number);
            agreement.setBuyerOrderReferencedDocument(order);
        });
        return agreement;
    }

    /** BG-13: the site, where there is but one, and the last day. */
    HeaderTradeDeliveryType delivery() {
        ServicePeriod served = content.bill().served();
        HeaderTradeDeliveryType delivery = new HeaderTradeDeliveryType();
        if (served.isAtOneSite()) {
            TradePartyType site = named(served.site());
            served.storeNumber().map(IDType::new).ifPresent(site::addID);
            site.setPostalTradeAddress(address(served.address()));
            delivery.setShipToTradeParty(site);
        }
        content.delivered().ifPresent(day -> {
            SupplyChainEventType done = new SupplyChainEventType();
            done.setOccurrenceDateTime(CiiValues.date(day));
            delivery.setActualDeliverySupplyChainEvent(done);
        });
        return delivery;
    }

    static TradePartyType named(String name) {
        TradePartyType party = new TradePartyType();
        party.setName(name);
        return party;
    }

    private TradePartyType seller() {
        Shop shop = content.bill().shop();
        SellerNumbers numbers = content.seller();
        TradePartyType party = named(shop.name());
        numbers.assigned().map(IDType::new).ifPresent(party::addID);
        numbers.text().map(TextType::new).ifPresent(party::addDescription);
        numbers.legal().ifPresent(number -> {
            LegalOrganizationType organization = new LegalOrganizationType();
            organization.setID(number);
            party.setSpecifiedLegalOrganization(organization);
        });
        TradeContactType contact = new TradeContactType();
        contact.setTelephoneUniversalCommunication(phone(shop.phone()));
        contact.setEmailURIUniversalCommunication(mail(shop.email()));
        party.addDefinedTradeContact(contact);
        party.setPostalTradeAddress(address(shop.address()));
        numbers.vatId().map(CiiParties::vat).ifPresent(party::addSpecifiedTaxRegistration);
        return party;
    }

    private TradePartyType buyer() {
        BillTo billTo = content.bill().billTo();
        TradePartyType party = named(billTo.name());
        if (billTo.attention().isPresent() || billTo.email().isPresent()) {
            TradeContactType contact = new TradeContactType();
            billTo.attention().ifPresent(contact::setPersonName);
            billTo.email().map(CiiParties::mail).ifPresent(contact::setEmailURIUniversalCommunication);
            party.addDefinedTradeContact(contact);
        }
        party.setPostalTradeAddress(address(billTo.address()));
        content.buyerVatId().map(CiiParties::vat).ifPresent(party::addSpecifiedTaxRegistration);
        return party;
    }

    private static TradeAddressType address(Address address) {
        TradeAddressType target = new TradeAddressType();
        filled(address.postalCode()).ifPresent(target::setPostcodeCode);
        List<String> street = address.street();
        street.stream().findFirst().ifPresent(target::setLineOne);
        street.stream().skip(1).findFirst().ifPresent(target::setLineTwo);
        if (street.size() > 2) {
            target.setLineThree(String.join(", ", street.subList(2, street.size())));
        }
        filled(address.city()).ifPresent(target::setCityName);
        target.setCountryID(address.country());
        filled(address.region()).map(TextType::new).ifPresent(target::addCountrySubDivisionName);
        return target;
    }

    private static TaxRegistrationType vat(String id) {
        IDType number = new IDType(id);
        number.setSchemeID(VAT_NUMBER);
        TaxRegistrationType registration = new TaxRegistrationType();
        registration.setID(number);
        return registration;
    }

    private static UniversalCommunicationType phone(String number) {
        UniversalCommunicationType phone = new UniversalCommunicationType();
        phone.setCompleteNumber(number);
        return phone;
    }

    private static UniversalCommunicationType mail(String address) {
        UniversalCommunicationType mail = new UniversalCommunicationType();
        mail.setURIID(address);
        return mail;
    }

    private static Optional<String> filled(String text) {
        return Optional.of(text).filter(found -> !found.isBlank());
    }
}
