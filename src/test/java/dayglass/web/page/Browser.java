package dayglass.web.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser without a window. Where none is installed the test that asks for it is skipped and says so. */
public final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    public static Browser start(Path profile) {
        Optional<File> browser = onPath("chromium", "chromium-browser", "google-chrome");
        Optional<File> driver = onPath("chromedriver");
        assumeTrue(browser.isPresent(), "no browser is installed: chromium is not on the path");
        assumeTrue(driver.isPresent(), "no browser driver is installed: chromedriver is not on the path");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.get());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--window-size=1440,1000",
                "--user-data-dir=" + profile);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.get())
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    private static Optional<File> onPath(String... names) {
        List<String> folders = List.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1));
        return Stream.of(names)
                .flatMap(name -> folders.stream().map(folder -> new File(folder, name)))
                .filter(File::canExecute)
                .findFirst();
    }

    /** Makes the browser a phone of this width, which a window could not be. */
    public void beAPhone(int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 800, "deviceScaleFactor", 2, "mobile", true));
    }

    /** Shows pages as they are printed, or again as on a screen. */
    public void showAsPrinted(boolean printed) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", printed ? "print" : "screen"));
    }

    public void open(String address) {
        leave(() -> driver.get(address));
    }

    public String address() {
        return String.valueOf(driver.getCurrentUrl());
    }

    public WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    public List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    public String text(String selector) {
        return find(selector).getText();
    }

    public void click(String selector) {
        find(selector).click();
    }

    /** Clicks what leads to another page, or to the same one anew, and waits until that is there. */
    public void follow(String selector) {
        leave(() -> click(selector));
    }

    /** Presses keys that lead to another page, or to the same one anew, and waits until that is there. */
    public void followBy(CharSequence... keys) {
        leave(() -> press(keys));
    }

    /**
     * A click comes back before the browser has begun to send a form, so that an address opened then may be overtaken by
     * the form's answer; the driver itself comes back from some pages half read. So the page is marked, and what is waited
     * for is a whole page without the mark.
     */
    private void leave(Runnable act) {
        driver.executeScript("window.stillTheOldPage = true;");
        act.run();
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> "no other page comes after " + address())
                // Between two pages there is none to ask.
                .ignoring(WebDriverException.class)
                .until(it -> Boolean.TRUE.equals(driver.executeScript("return !window.stillTheOldPage;")) && isWhole());
    }

    private boolean isWhole() {
        return "complete".equals(driver.executeScript("return document.readyState;"));
    }

    /** Presses keys where the focus is. */
    public void press(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    /** Presses a key so many times, wherever the focus goes meanwhile. */
    void pressTimes(int times, Keys key) {
        for (int i = 0; i < times; i++) {
            press(key);
        }
    }

    /** Moves on with the tab key until the focus is on what the selector names. */
    public void tabTo(String selector) {
        for (int i = 0; i < 200; i++) {
            if (driver.switchTo().activeElement().equals(find(selector))) {
                return;
            }
            press(Keys.TAB);
        }
        throw new AssertionError("the tab key never reaches " + selector);
    }

    public void write(String selector, String text) {
        WebElement field = find(selector);
        field.clear();
        field.sendKeys(text);
    }

    public void waitForText(String selector, String text) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> selector + " never says " + text + " at " + address())
                // The page may be replaced between the finding of an element and the reading of it.
                .ignoring(WebDriverException.class)
                .until(it ->
                        all(selector).stream().anyMatch(each -> each.getText().equals(text)) && isWhole());
    }

    public void waitForAddress(String part) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> address() + " never becomes " + part)
                // The address is the next page's before the page is whole.
                .ignoring(WebDriverException.class)
                .until(it -> address().contains(part) && isWhole());
    }

    /** Runs a script in the page, as a user's hand would do what no key does. */
    public Object run(String script, Object... arguments) {
        return String.valueOf(driver.executeScript(script, arguments));
    }

    /** Keeps what is seen as a PNG. */
    public void photograph(Path file) throws java.io.IOException {
        java.nio.file.Files.write(file, driver.getScreenshotAs(org.openqa.selenium.OutputType.BYTES));
    }

    /** By how many pixels the page is wider than what is seen of it. */
    public long sidewaysScroll() {
        return Long.parseLong(String.valueOf(driver.executeScript(
                "return document.documentElement.scrollWidth - document.documentElement.clientWidth;")));
    }

    /** How wide each element is drawn, in pixels. */
    double width(String selector) {
        return Double.parseDouble(String.valueOf(driver.executeScript(
                "return document.querySelector(arguments[0]).getBoundingClientRect().width;", selector)));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
