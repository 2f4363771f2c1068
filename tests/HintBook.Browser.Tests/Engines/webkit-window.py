"""A window with nothing but one page in it, for WebKitWebDriver to drive; or, with --print, a page that is opened, unfolded and printed."""
import argparse
import pathlib

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402

options = argparse.ArgumentParser()
options.add_argument("--data", required=True, help="the folder that keeps what pages store: a window that keeps nothing has no console either")
options.add_argument("--dark", action="store_true")
options.add_argument("--languages", default="en-GB")
options.add_argument("--no-script", action="store_true")
options.add_argument("--print", nargs=2, metavar=("ADDRESS", "PDF"))
options.add_argument("--proxy", help="the address that answers for every host")
options.add_argument("--width", type=int, default=390)
options.add_argument("--height", type=int, default=844)
options = options.parse_args()

gtk = Gtk.Settings.get_default()
gtk.set_property("gtk-application-prefer-dark-theme", options.dark)
# Said to pages as "reduced motion".
gtk.set_property("gtk-enable-animations", False)

kept = WebKit2.WebsiteDataManager(base_data_directory=options.data, base_cache_directory=options.data + "/cache")
if options.proxy:
    kept.set_network_proxy_settings(WebKit2.NetworkProxyMode.CUSTOM, WebKit2.NetworkProxySettings.new(options.proxy, None))
context = WebKit2.WebContext(website_data_manager=kept)
context.set_preferred_languages(options.languages.split(","))


def open_window(*_):
    settings = WebKit2.Settings(
        enable_javascript=not options.no_script,
        enable_write_console_messages_to_stdout=True,
        hardware_acceleration_policy=WebKit2.HardwareAccelerationPolicy.NEVER)
    view = WebKit2.WebView(web_context=context, settings=settings, is_controlled_by_automation=not options.print)
    view.connect("close", lambda *_: Gtk.main_quit())
    window = Gtk.Window()
    window.set_default_size(options.width, options.height)
    window.add(view)
    window.show_all()
    view.grab_focus()
    return view


def drive():
    def start(_, session):
        program = WebKit2.ApplicationInfo()
        program.set_name("HintBook")
        program.set_version(1, 0, 0)
        session.set_application_info(program)
        session.connect("create-web-view", open_window)

    context.set_automation_allowed(True)
    context.connect("automation-started", start)


def print_page(address, pdf):
    view = open_window()
    settings = Gtk.PrintSettings()
    settings.set(Gtk.PRINT_SETTINGS_OUTPUT_URI, pathlib.Path(pdf).as_uri())
    settings.set(Gtk.PRINT_SETTINGS_PRINTER, "Print to File")
    settings.set(Gtk.PRINT_SETTINGS_OUTPUT_FILE_FORMAT, "pdf")
    operation = WebKit2.PrintOperation.new(view)
    operation.set_print_settings(settings)
    operation.connect("finished", lambda *_: Gtk.main_quit())
    unfold = """
        for (const each of document.querySelectorAll("details")) each.open = true;
        return Promise.all([...document.images].map(picture => { picture.loading = "eager"; return picture.decode(); })).then(() => true);
        """

    def loaded(_, event):
        if event == WebKit2.LoadEvent.FINISHED:
            view.call_async_javascript_function(unfold, -1, None, None, None, None, lambda *_: operation.print_())

    view.connect("load-changed", loaded)
    view.load_uri(address)


if options.print:
    print_page(*options.print)
else:
    drive()
Gtk.main()
