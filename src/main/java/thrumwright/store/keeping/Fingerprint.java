package thrumwright.store.keeping;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/**
 * What a file holds, in short: files that differ have other fingerprints, whatever their times say.
 *
 * @param sha256 64 hexadecimal digits
 */
public record Fingerprint(String sha256) {
    public Fingerprint {
        Objects.requireNonNull(sha256);
    }

    public static Fingerprint of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    public static Fingerprint of(byte[] bytes) {
        try {
            return new Fingerprint(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
