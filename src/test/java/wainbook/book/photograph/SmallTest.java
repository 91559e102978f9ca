package wainbook.book.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are drawn here: a lawn, with a red corner at its upper left as it was seen. */
class SmallTest {

    private static final int CORNER = 60;

    private static byte[] stored(String format, int width, int height, int cornerX, int cornerY) throws IOException {
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D onto = picture.createGraphics();
        onto.setColor(Color.GREEN);
        onto.fillRect(0, 0, width, height);
        onto.setColor(Color.RED);
        onto.fillRect(cornerX, cornerY, CORNER, CORNER);
        onto.dispose();
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, format, bytes);
        return bytes.toByteArray();
    }

    /** A segment APP1 with one tag behind the beginning of the file, as a camera writes it. */
    private static byte[] turned(byte[] jpeg, int orientation, ByteOrder order) {
        ByteBuffer tiff = ByteBuffer.allocate(26).order(order);
        tiff.put(order == ByteOrder.BIG_ENDIAN ? new byte[] {'M', 'M'} : new byte[] {'I', 'I'});
        tiff.putShort((short) 42).putInt(8).putShort((short) 1);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
        ByteBuffer whole = ByteBuffer.allocate(jpeg.length + 36);
        whole.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) 34);
        whole.put(new byte[] {'E', 'x', 'i', 'f', 0, 0}).put(tiff.array());
        return whole.put(jpeg, 2, jpeg.length - 2).array();
    }

    private static BufferedImage drawn(Small small) throws IOException {
        String data = small.source().substring(small.source().indexOf(',') + 1);
        return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(data)));
    }

    private static boolean red(BufferedImage picture, int x, int y) {
        var colour = new Color(picture.getRGB(x, y));
        return colour.getRed() > 150 && colour.getGreen() < 100;
    }

    /** Where a camera held so stores what was seen at the upper left of 400 by 240. */
    @ParameterizedTest
    @CsvSource({
        "1, 400, 240, 0, 0",
        "2, 400, 240, 340, 0",
        "3, 400, 240, 340, 180",
        "4, 400, 240, 0, 180",
        "5, 240, 400, 0, 0",
        "6, 240, 400, 0, 340",
        "7, 240, 400, 180, 340",
        "8, 240, 400, 180, 0"
    })
    void a_picture_stands_upright_however_the_camera_was_held(
            int orientation, int width, int height, int cornerX, int cornerY) throws IOException {
        byte[] plain = stored("jpeg", width, height, cornerX, cornerY);
        for (ByteOrder order : new ByteOrder[] {ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN}) {
            BufferedImage upright =
                    drawn(Small.of(turned(plain, orientation, order)).orElseThrow());

            assertThat(upright.getWidth()).isEqualTo(400);
            assertThat(upright.getHeight()).isEqualTo(240);
            assertThat(red(upright, 30, 30)).isTrue();
            assertThat(red(upright, 370, 30)).isFalse();
            assertThat(red(upright, 30, 210)).isFalse();
            assertThat(red(upright, 370, 210)).isFalse();
        }
    }

    @Test
    void a_large_picture_becomes_small_and_keeps_nothing_of_what_the_camera_wrote() throws IOException {
        byte[] large = turned(stored("jpeg", 3000, 4000, 0, 0), 1, ByteOrder.BIG_ENDIAN);
        Small small = Small.of(large).orElseThrow();

        assertThat(drawn(small).getWidth()).isBetween(358, 362);
        assertThat(drawn(small).getHeight()).isEqualTo(480);
        assertThat(small.height()).isEqualTo(188);
        assertThat(small.width()).isBetween(140, 142);
        assertThat(new String(
                        Base64.getDecoder()
                                .decode(small.source().substring(small.source().indexOf(',') + 1)),
                        java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("Exif");
        assertThat(Small.of(large)).contains(small);
    }

    @Test
    void a_small_picture_is_not_made_larger() throws IOException {
        Small small = Small.of(stored("png", 120, 80, 0, 0)).orElseThrow();

        assertThat(drawn(small).getWidth()).isEqualTo(120);
        assertThat(small.width()).isEqualTo(47);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no picture", "RIFF....WEBPVP8 "})
    void what_cannot_be_drawn_is_left_out(String bytes) {
        assertThat(Small.of(bytes.getBytes(java.nio.charset.StandardCharsets.US_ASCII)))
                .isEmpty();
    }

    @Test
    void a_broken_picture_is_left_out_and_a_broken_tag_turns_nothing() throws IOException {
        byte[] whole = stored("jpeg", 400, 240, 0, 0);
        byte[] half = java.util.Arrays.copyOf(whole, 40);

        assertThat(Small.of(half)).isEmpty();
        assertThat(Upright.of(turned(whole, 9, ByteOrder.BIG_ENDIAN))).isEqualTo(1);
        assertThat(Upright.of(java.util.Arrays.copyOf(turned(whole, 6, ByteOrder.BIG_ENDIAN), 25)))
                .isEqualTo(1);
    }
}
