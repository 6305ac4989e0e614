package icequill.party;

/** How electronic invoices with sales tax are written. Those with VAT always follow EN 16931. */
public enum SalesTaxEncoding {
    /**
     * The customer's books know sales tax: one sub-total for each authority, under the schemes STT and LOC of UN list 5153.
     * Good UBL 2.1, but not by EN 16931, which knows no tax but VAT.
     */
    PLAIN,
    /**
     * By EN 16931: nothing is subject to VAT, and the sales tax is a charge on the document. The total without tax is then
     * that of the paper and its tax together; what is due is the same.
     */
    EN16931
}
