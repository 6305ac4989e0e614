package icequill.problem;

/** Checks against bugs: they throw at once, naming the argument, its value and its bounds. Bad input is a {@link Problem}. */
public final class Check {

    private Check() {
    }

    /**
     * Returns the value when it lies within the bounds, both inclusive.
     *
     * @throws IllegalArgumentException otherwise
     */
    public static <T extends Comparable<T>> T inRange(T value, T least, T most, String name) {
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw new IllegalArgumentException(name + " is " + value + ", must be from " + least + " to " + most);
        }
        return value;
    }

    /**
     * Insists on a condition.
     *
     * @throws IllegalArgumentException with the message, when it does not hold
     */
    public static void that(boolean condition, String message) {
        if (!condition) {
            throw new IllegalArgumentException(message);
        }
    }
}
