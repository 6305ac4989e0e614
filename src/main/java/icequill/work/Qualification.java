package icequill.work;

/** What somebody must be qualified for before a task is given to him. */
public enum Qualification {
    /** Acid cleaner, alone at the machine: trained on its data sheet (29 CFR 1910.1200(h)). */
    ACID,
    /** On or near live parts (29 CFR 1910.331 to 335, from memory). */
    ELECTRICAL,
    /** Whatever could release refrigerant (40 CFR 82 subpart F). */
    REFRIGERANT
}
