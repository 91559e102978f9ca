package wainbook.setup.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;

/** A file of the folder as text in UTF-8, without the byte order mark that some editors put in front. */
record TextFile(String name, String text) {

    static Optional<TextFile> read(Path folder, String name, List<Fault> faults) {
        Path path = folder.resolve(name);
        if (!Files.isRegularFile(path)) {
            faults.add(Fault.of(Place.of(name), "fileMissing", "no such file", name));
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
            String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
            // As the ledger keeps text; else a name typed in parts would differ from its own record for ever.
            return Optional.of(new TextFile(name, Normalizer.normalize(bare, Normalizer.Form.NFC)));
        } catch (CharacterCodingException otherEncoding) {
            faults.add(Fault.of(Place.of(name), "notUtf8", "another encoding", "UTF-8"));
        } catch (IOException unreadable) {
            faults.add(Fault.of(Place.of(name), "fileUnreadable", unreadable.getMessage(), "a readable file"));
        }
        return Optional.empty();
    }
}
