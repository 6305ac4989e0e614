/**
 * YAML and JSON as trees that know where each value stands; enter at {@link icequill.files.yaml.YamlReader}.
 *
 * <p>Reading goes on past a fault: what cannot be read is reported and left out, the rest is still checked, so that one run
 * reports all problems of all files.
 */
@NullMarked
package icequill.files.yaml;

import org.jspecify.annotations.NullMarked;
