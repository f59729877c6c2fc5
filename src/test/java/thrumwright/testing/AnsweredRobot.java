package thrumwright.testing;

import java.awt.AWTException;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.regex.Pattern;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;

/**
 * A robot whose every act has been answered when it returns. The robot of the library waits a while after each act
 * instead, mostly for nothing and on a busy machine too short: here the screen is asked until no event is on its way any
 * more and the window has nothing left to do.
 */
final class AnsweredRobot implements InvocationHandler {
    private static final Pattern ACT = Pattern.compile(
            "click|rightClick|doubleClick|press.*|release.*|move.*|rotate.*|enterText|type|jitter|focus.*|showPopupMenu");

    private final Robot robot;
    private final java.awt.Robot screen;

    private AnsweredRobot(Robot robot, java.awt.Robot screen) {
        this.robot = robot;
        this.screen = screen;
    }

    static Robot make() throws AWTException {
        // A frame that is older than its robot would never be found.
        Robot robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(0);
        robot.settings().eventPostingDelay(0);
        robot.settings().simpleWaitForIdle(true);
        // the longest that the library allows
        robot.settings().timeoutToBeVisible(60_000);
        robot.settings().timeoutToFindPopup(60_000);
        return (Robot) Proxy.newProxyInstance(
                Robot.class.getClassLoader(),
                new Class<?>[] {Robot.class},
                new AnsweredRobot(robot, new java.awt.Robot()));
    }

    @Override
    public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
        if (method.getName().equals("waitForIdle")) {
            waitForTheAnswer();
            return null;
        }
        try {
            return method.invoke(robot, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        } finally {
            if (ACT.matcher(method.getName()).matches()) {
                waitForTheAnswer();
            }
        }
    }

    private void waitForTheAnswer() {
        if (PureJavaScreen.isAskedFor()) {
            PureJavaScreen.waitForTheAnswer();
        } else {
            screen.waitForIdle();
        }
    }
}
