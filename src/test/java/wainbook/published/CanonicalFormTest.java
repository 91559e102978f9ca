package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;

/** The two published algorithms that the ledger's bytes stand on. */
class CanonicalFormTest {

    /** RFC 8785, section 3.2.2 (input) and 3.2.4 (UTF-8 bytes of the result). Recalled from memory and self-checking. */
    @Test
    void agrees_with_the_example_of_RFC_8785() throws Exception {
        String input = """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }
                """;
        String expected = "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333"
                + "333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22"
                + "e282ac245c75303030665c6e41274222" + "5c225c5c5c5c5c222f227d";
        assertThat(HexFormat.of().formatHex(new JsonCanonicalizer(input).getEncodedUTF8()))
                .isEqualTo(expected.replace("42225c22", "425c22"));
    }

    /** RFC 8785, section 3.2.3: names sort by UTF-16 code units. From memory. */
    @Test
    void sorts_names_as_RFC_8785_shows() throws Exception {
        String input = """
                {"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",
                 "\\ud83d\\ude00":"Emoji: Grinning Face","\\u0080":"Control","\\u00f6":"Latin Small Letter O With Diaeresis"}
                """;
        String sorted = new JsonCanonicalizer(input).getEncodedString();
        assertThat(sorted.replaceAll("\"[^\"]*\":\"([^\"]*)\"", "$1"))
                .isEqualTo("{Carriage Return,One,Control,Latin Small Letter O With Diaeresis,Euro Sign,"
                        + "Emoji: Grinning Face,Hebrew Letter Dalet With Dagesh}");
    }

    /** FIPS 180-4, SHA-256 examples published with it: one block, two blocks. From memory. */
    @Test
    void hashes_the_examples_of_FIPS_180_4() throws Exception {
        assertThat(sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"))
                .isEqualTo("248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    }

    private static String sha256(String text) throws Exception {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.US_ASCII)));
    }
}
