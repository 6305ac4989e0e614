package icequill.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures that would fill the memory, or that never end. */
class HugePictureAttackTest {

    @TempDir
    private Path shop;

    /** A file of 900 KB that unpacks to 2.7 GB. */
    @Test
    void logoOfThirtyThousandPixelsEachWay_isNotUnpacked() throws IOException {
        Files.write(shop.resolve("logo.png"), png(30_000));

        assertThatThrownBy(() -> Picture.of(shop.resolve("logo.png"))).isInstanceOf(IOException.class)
                .hasMessage("it has 900000000 pixels, and may have 25000000");
        Files.write(shop.resolve("small.png"), png(40));
        assertThat(Picture.of(shop.resolve("small.png")).image().getWidth()).isEqualTo(40);
    }

    @Test
    void logoThatIsAPipe_isNotWaitedFor() throws Exception {
        assertThat(new ProcessBuilder("mkfifo", shop.resolve("logo.png").toString()).start().waitFor()).isZero();

        assertThatThrownBy(() -> Picture.of(shop.resolve("logo.png"))).hasMessage("no ordinary file");
    }

    /** A gray picture by the PNG specification (W3C, second edition, 5 and 11): one bit for each pixel, all zero. */
    private static byte[] png(int size) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(new byte[]{(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        chunk(file, "IHDR", ByteBuffer.allocate(13).putInt(size).putInt(size).put(new byte[]{1, 0, 0, 0, 0}).array());
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream rows = new DeflaterOutputStream(packed)) {
            byte[] row = new byte[1 + (size + 7) / 8];
            for (int i = 0; i < size; i++) {
                rows.write(row);
            }
        }
        chunk(file, "IDAT", packed.toByteArray());
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String name, byte[] data) throws IOException {
        byte[] kind = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(kind);
        sum.update(data);
        file.write(ByteBuffer.allocate(4).putInt(data.length).array());
        file.write(kind);
        file.write(data);
        file.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }
}
