"""Phone numbers as they come in, and every zone that they may be in."""

import subprocess
import sys

import pytest

from followup.phone_numbers import NotANumber, candidate_zones, read_number


@pytest.mark.parametrize(
    "written", ["312-555-0147", "(312) 555 0147", "+1 312 555 0147", "1.312.555.0147", " 3125550147 ", "+13125550147"]
)
def test_the_same_number_however_it_is_written(written: str) -> None:
    number = read_number(written)
    assert (number.e164, number.country) == ("+13125550147", "US")
    assert number.line == "mobile_or_landline"
    assert number.zones == ("America/Chicago",)


@pytest.mark.parametrize(
    "written",
    [
        *("", "\x00", "911", "555-0147", "312-555-014", "312-555-01477", "112-555-0147", "+999 312 555 0147"),
        *("call me", "312-555-TEXT", "312-555-0147 ext 5", "312-555-0147 #5", "312-555-0147;ext=5", "3125550147" * 30),
    ],
)
def test_what_is_no_number_is_refused(written: str) -> None:
    with pytest.raises(NotANumber):
        read_number(written)


def test_a_number_without_its_country_is_read_as_the_shops() -> None:
    # +44 20 7946 0000-0999: kept free for drama by the United Kingdom's regulator (from memory).
    assert read_number("020 7946 0018", "GB").e164 == "+442079460018"
    assert read_number("+44 20 7946 0018", "US").zones == ("Europe/London",)
    assert read_number("020 7946 0018", "GB").line == "landline"


def test_toll_free_is_no_place() -> None:
    # Source: phonenumbers 9.0.43 reports 42 zones for toll-free numbers.
    number = read_number("800-555-0147")
    assert number.line == "toll_free"
    assert len(number.zones) > 30
    assert {"Pacific/Guam", "America/St_Johns"} <= set(number.zones)


@pytest.mark.parametrize(
    ("laid_over", "older"), [("364", "270"), ("448", "850"), ("458", "541"), ("930", "812")], ids=lambda code: str(code)
)
def test_an_area_code_laid_over_another_has_its_zones(laid_over: str, older: str) -> None:
    # Source: of these four phonenumbers 9.0.43 reports one zone although the area has two.
    zones = candidate_zones(f"+1{laid_over}5550147")
    assert len(zones) == 2
    assert zones == candidate_zones(f"+1{older}5550147")


def test_area_codes_over_several_zones() -> None:
    # Source: counted in phonenumbers 9.0.43: of 359 area codes of the United States 19 span several zones; four more
    # were laid over such an area. A later version of the data may know more, not fewer.
    import phonenumbers

    spanning = set()
    for area in range(200, 1000):
        number = f"+1{area}5550147"
        if phonenumbers.region_code_for_number(phonenumbers.parse(number)) == "US":
            zones = candidate_zones(number)
            assert zones
            if 1 < len(zones) < 10:
                spanning.add(area)
    assert len(spanning) >= 19 + 4
    # Western Kentucky, western Nebraska, northern Idaho, the Navajo Nation in Arizona.
    assert {270, 308, 208, 928} <= spanning


def test_a_number_is_in_its_whole_area_not_only_in_its_exchange() -> None:
    # 270-555 alone is reported as one zone; numbers are kept when people move within an area and beyond.
    assert candidate_zones("+12705550147") == ("America/Chicago", "America/New_York")


def test_unknown_is_empty() -> None:
    assert candidate_zones("+9995550147") == ()
    assert candidate_zones("nothing") == ()


def test_neither_the_geocoder_nor_anything_at_the_start() -> None:
    # The geocoder takes 5 s and 200 MB; phonenumbers itself 100 ms, which `--help` must not pay.
    lines = (
        "import sys, followup.phone_numbers as numbers",
        "assert not any(name.startswith('phonenumbers') for name in sys.modules)",
        "numbers.read_number('312-555-0147')",
        "assert not any('geo' in name for name in sys.modules if name.startswith('phonenumbers'))",
    )
    subprocess.run([sys.executable, "-c", "\n".join(lines)], check=True)
