package icequill.einvoice;

import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Remittance.Detail;
import icequill.party.Shop;
import java.util.List;
import java.util.Optional;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.AddressLineType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.AddressType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.ContactType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.CountryType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.CustomerPartyType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PartyIdentificationType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PartyLegalEntityType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PartyNameType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PartyTaxSchemeType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PartyType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.SupplierPartyType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.TaxSchemeType;

/** Seller, buyer and payee in UBL. */
record UblParties(InvoiceContent content) {

    /** BG-4. */
    SupplierPartyType seller() {
        Shop shop = content.bill().shop();
        SellerNumbers numbers = content.seller();
        PartyType party = new PartyType();
        numbers.assigned().ifPresent(number -> party.addPartyIdentification(identification(number)));
        party.setPostalAddress(address(shop.address()));
        numbers.vatId().ifPresent(id -> party.addPartyTaxScheme(vat(id)));
        PartyLegalEntityType entity = entity(shop.name());
        if (content.followsEn16931()) {
            numbers.legal().ifPresent(entity::setCompanyID);
            numbers.text().ifPresent(entity::setCompanyLegalForm);
        } else {
            register(numbers.registrations(), entity, party);
        }
        party.addPartyLegalEntity(entity);
        party.setContact(contact(Optional.empty(), Optional.of(shop.phone()), Optional.of(shop.email())));
        SupplierPartyType seller = new SupplierPartyType();
        seller.setParty(party);
        return seller;
    }

    /** BG-7. */
    CustomerPartyType buyer() {
        BillTo billTo = content.bill().billTo();
        PartyType party = new PartyType();
        party.setPostalAddress(address(billTo.address()));
        content.buyerVatId().ifPresent(id -> party.addPartyTaxScheme(vat(id)));
        party.addPartyLegalEntity(entity(billTo.name()));
        if (billTo.attention().isPresent() || billTo.email().isPresent()) {
            party.setContact(contact(billTo.attention(), Optional.empty(), billTo.email()));
        }
        CustomerPartyType buyer = new CustomerPartyType();
        buyer.setParty(party);
        return buyer;
    }

    /** BG-10, where another than the seller takes the money. */
    Optional<PartyType> payee() {
        String payee = content.bill().shop().remittance().payee();
        return payee.equals(content.bill().shop().name()) ? Optional.empty() : Optional.of(named(payee));
    }

    static PartyType named(String name) {
        PartyNameType partyName = new PartyNameType();
        partyName.setName(name);
        PartyType party = new PartyType();
        party.addPartyName(partyName);
        return party;
    }

    static AddressType address(Address address) {
        AddressType target = new AddressType();
        List<String> street = address.street();
        street.stream().findFirst().ifPresent(target::setStreetName);
        street.stream().skip(1).findFirst().ifPresent(target::setAdditionalStreetName);
        if (street.size() > 2) {
            AddressLineType line = new AddressLineType();
            line.setLine(String.join(", ", street.subList(2, street.size())));
            target.addAddressLine(line);
        }
        filled(address.city()).ifPresent(target::setCityName);
        filled(address.postalCode()).ifPresent(target::setPostalZone);
        filled(address.region()).ifPresent(target::setCountrySubentity);
        CountryType country = new CountryType();
        country.setIdentificationCode(address.country());
        target.setCountry(country);
        return target;
    }

    static TaxSchemeType scheme(String id) {
        TaxSchemeType scheme = new TaxSchemeType();
        scheme.setID(id);
        return scheme;
    }

    /** Each registration by its name: the first as the company's number, the others beside it. Readers expect one company. */
    private static void register(List<Detail> registrations, PartyLegalEntityType entity, PartyType party) {
        registrations.stream().findFirst()
                .ifPresent(first -> entity.setCompanyID(first.value()).setSchemeName(first.name()));
        registrations.stream().skip(1).forEach(other -> {
            PartyIdentificationType number = new PartyIdentificationType();
            number.setID(other.value()).setSchemeName(other.name());
            party.addPartyIdentification(number);
        });
    }

    private static PartyLegalEntityType entity(String name) {
        PartyLegalEntityType entity = new PartyLegalEntityType();
        entity.setRegistrationName(name);
        return entity;
    }

    private static PartyIdentificationType identification(String number) {
        PartyIdentificationType identification = new PartyIdentificationType();
        identification.setID(number);
        return identification;
    }

    private static PartyTaxSchemeType vat(String id) {
        PartyTaxSchemeType tax = new PartyTaxSchemeType();
        tax.setCompanyID(id);
        tax.setTaxScheme(scheme(Category.VAT));
        return tax;
    }

    private static ContactType contact(Optional<String> name, Optional<String> phone, Optional<String> email) {
        ContactType contact = new ContactType();
        name.ifPresent(contact::setName);
        phone.ifPresent(contact::setTelephone);
        email.ifPresent(contact::setElectronicMail);
        return contact;
    }

    private static Optional<String> filled(String text) {
        return Optional.of(text).filter(found -> !found.isBlank());
    }
}
