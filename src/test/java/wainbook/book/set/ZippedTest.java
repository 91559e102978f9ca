package wainbook.book.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class ZippedTest {

    @Test
    void equal_files_give_equal_bytes_and_another_order_does_not() {
        Map<String, Supplier<byte[]>> files = new LinkedHashMap<>();
        files.put("a.txt", () -> new byte[] {1});
        files.put("b.txt", () -> new byte[] {2});
        Map<String, Supplier<byte[]>> other = new LinkedHashMap<>();
        other.put("b.txt", () -> new byte[] {2});
        other.put("a.txt", () -> new byte[] {1});
        assertThat(Zipped.of(files)).isEqualTo(Zipped.of(new LinkedHashMap<>(files)));
        assertThat(Zipped.of(files)).isNotEqualTo(Zipped.of(other));
    }
}
