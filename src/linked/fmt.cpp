// SPDX-License-Identifier: MIT
// The fmt library's own functions, from its header. Its package has them as a shared library alone, and that would
// bring a shared libstdc++ with it: loading the two takes longer than most commands take.
#include <fmt/format-inl.h>

namespace fmt::detail {

template dragonbox::decimal_fp<float> dragonbox::to_decimal(float value) noexcept;
template dragonbox::decimal_fp<double> dragonbox::to_decimal(double value) noexcept;
template locale_ref::locale_ref(const std::locale& locale);
template std::locale locale_ref::get<std::locale>() const;
template thousands_sep_result<char> thousands_sep_impl(locale_ref locale);
template char decimal_point_impl(locale_ref locale);
template void buffer<char>::append(const char* begin, const char* end);
template void vformat_to(buffer<char>& out, string_view format, basic_format_args<buffer_context<char>> arguments,
                         locale_ref locale);

}  // namespace fmt::detail
