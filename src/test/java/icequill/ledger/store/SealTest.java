package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Hash;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Hashes and seals. */
class SealTest {

    /** The first example of NIST's "SHA-256" (csrc.nist.gov, examples with intermediate values). */
    @Test
    void hash_isThePublishedOne() {
        assertThat(Hash.of("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    /** Worked out with another program: {@code printf '\x00\x00\x00\x02ab\xff\xff\xff\xff\x00\x00\x00\x00' | sha256sum}. */
    @Test
    void seal_isTheHashOfThePartsWithTheirLengths() {
        assertThat(seal("ab", null, "")).isEqualTo("a4e3375e9a4c61a1565b588348229bf7fd6b8086dba0f0065a888d3a3b60d87e");
    }

    @Test
    void seal_tellsApartWhatReadsAlikeWhenJoined() {
        assertThat(List.of(seal("ab", "c"), seal("a", "bc"), seal("abc"), seal("abc", ""), seal("abc", null),
                seal("", "abc"))).doesNotHaveDuplicates();
    }

    private static String seal(@Nullable String... parts) {
        return Seal.of(Arrays.asList(parts));
    }
}
