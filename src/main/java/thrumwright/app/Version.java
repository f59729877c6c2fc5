package thrumwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The version this program was built as. */
public final class Version {
    private Version() {}

    /**
     * The number alone, such as {@code 0.1.0}.
     *
     * @throws IOException if the program was put together without its version
     */
    public static String number() throws IOException {
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IOException("This copy of Thrumwright does not say which version it is.");
            }
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        }
    }
}
