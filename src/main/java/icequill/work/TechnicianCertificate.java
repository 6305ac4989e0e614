package icequill.work;

import java.util.Optional;

/**
 * What somebody may do with refrigerant, as he proved it (40 CFR 82.161; the rule's text from memory).
 *
 * @param person by name
 * @param number that stands on it
 */
public record TechnicianCertificate(String person, Type type, Optional<String> number) {

    /** For which appliances it holds. */
    public enum Type {
        /** Small appliances: made, charged and hermetically sealed in a factory, with five pounds or less. */
        TYPE_I,
        /** High pressure, small appliances apart. */
        TYPE_II,
        /** Low pressure. */
        TYPE_III,
        /** All of these. */
        UNIVERSAL
    }

    /** Whether it is somebody's, however his name is spaced and written. */
    public boolean isOf(String name) {
        return Attendance.known(person).equals(Attendance.known(name));
    }

    /** Whether it will do where one of a type is asked for. */
    public boolean covers(Type needed) {
        return type == needed || type == Type.UNIVERSAL;
    }
}
