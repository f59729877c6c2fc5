package thrumwright.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;

/** Marks a window test that turns the mouse wheel or opens a menu with the Alt key, which need an X screen. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@DisabledIfSystemProperty(
        named = PureJavaScreen.SIZE,
        matches = ".*",
        disabledReason = "The screen drawn in Java has no mouse wheel and no Alt key; this test runs on an X screen.")
public @interface RealScreenOnly {}
